package unthrum.facts;

import unthrum.survey.Aim;

/** One of the client's aims with its rank: 1 is the weightiest. */
public record AimedAt(
        Aim aim,
        int rank) implements Fact {
    @Override
    public String panel() {
        return "";
    }

    @Override
    public Place place() {
        return Place.VEHICLE;
    }
}
