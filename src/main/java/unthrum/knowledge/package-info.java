/** The rule base as a body of knowledge: rule cards, thresholds, sources and assumptions, loaded and checked. */
package unthrum.knowledge;
