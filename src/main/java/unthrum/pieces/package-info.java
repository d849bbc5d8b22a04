/** From the plan's cover to pieces, to the sheets and rolls they are cut from, and to the shopping for it. */
package unthrum.pieces;
