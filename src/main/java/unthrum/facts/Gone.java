package unthrum.facts;

import unthrum.survey.Missing;

/** A factory part that is no longer there. */
public record Gone(
        String panel,
        Missing part) implements Fact {
}
