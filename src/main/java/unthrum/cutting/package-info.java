/** Cutting layouts: which piece is cut where, from which sheet, offcut or roll, with as little waste as can be found. */
package unthrum.cutting;
