package unthrum.facts;

import unthrum.survey.Loose;

/** Something loose on the panel. */
public record Rattle(
        String panel,
        Loose part) implements Fact {
}
