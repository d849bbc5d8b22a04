/** The words of the rules: the facts they see on a vehicle and the conclusions they may draw. Records only. */
package unthrum.facts;
