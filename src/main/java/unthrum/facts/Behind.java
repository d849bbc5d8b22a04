package unthrum.facts;

import unthrum.survey.Hazard;

/** What lies on, in or behind the panel. */
public record Behind(
        String panel,
        Hazard hazard) implements Fact {
}
