/** From the plan's cover to pieces of material, to the sheets and rolls they are cut from, and to the shopping for it. */
package unthrum.pieces;
