/** Cutting layouts: which piece is cut where, from which sheet, offcut or roll, with the least waste found. */
package unthrum.cutting;
