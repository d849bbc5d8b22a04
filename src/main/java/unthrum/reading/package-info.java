/** Reads YAML files into records: quantities with units, words of the trade, and every problem with its place. */
package unthrum.reading;
