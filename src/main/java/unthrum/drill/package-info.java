/** Practice for apprentices: panels to judge, answers marked against the case, and what comes up again when. */
package unthrum.drill;
