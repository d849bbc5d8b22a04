/** What was fitted to a surveyed vehicle and what proves it: the records of an as-built file and its reader. */
package unthrum.built;
