/** Reasoning over a vehicle: derived facts, cases, the layup search and the verdict of each panel. */
package unthrum.reasoning;
