/** The commands: each reads its arguments, asks one package, and prints. */
package unthrum.cli;
