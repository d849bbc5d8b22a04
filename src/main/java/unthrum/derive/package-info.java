/** From what the survey states to the facts that the rules see: assumptions filled in, numbers computed. */
package unthrum.derive;
