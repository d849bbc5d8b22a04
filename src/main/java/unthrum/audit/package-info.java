/** A finished job held against the wants, limits, vetoes and duties that made its plan. */
package unthrum.audit;
