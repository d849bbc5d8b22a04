/** The rule engine behind plain values: firing rules, reading why a conclusion holds and why a rule stayed silent. */
package unthrum.reasoning.engine;
