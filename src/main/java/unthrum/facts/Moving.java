package unthrum.facts;

import unthrum.survey.MovingPart;

/** A part that moves near the panel and must keep its travel. */
public record Moving(
        String panel,
        MovingPart part) implements Fact {
}
