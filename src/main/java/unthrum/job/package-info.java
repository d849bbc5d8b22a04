/** The order of work: from a plan to the steps of the job, what waits for what, and what may run side by side. */
package unthrum.job;
