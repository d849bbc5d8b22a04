package unthrum.facts;

/** A measurement that decides: the fact, in the survey's own key, that nobody has stated yet. */
public record Question(Place place, String fact) implements Conclusion {
}
