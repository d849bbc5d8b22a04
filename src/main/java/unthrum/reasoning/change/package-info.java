/** Why not, what would change it, what to measure next: the case of one panel turned over, always by judging again. */
package unthrum.reasoning.change;
