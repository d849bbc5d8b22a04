/** Unthrum: from a survey of bare panels to a justified treatment of each. */
package unthrum;
