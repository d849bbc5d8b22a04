/** The plan of a whole vehicle: every panel's advice, what is scarce shared out, and the totals against the limits. */
package unthrum.plan;
