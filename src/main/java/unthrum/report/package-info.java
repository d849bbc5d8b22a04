/** Plans, cases and rules as text for people and as JSON for programs; both are drawn from the same values. */
package unthrum.report;
