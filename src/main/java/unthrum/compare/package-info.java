/** What differs between two plans, or between a plan and what was fitted, with the facts and rules that caused it. */
package unthrum.compare;
