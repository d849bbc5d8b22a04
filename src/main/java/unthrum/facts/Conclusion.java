package unthrum.facts;

/** What a rule may say. Conclusions are values: two rules that say the same thing support one conclusion. */
public sealed interface Conclusion permits Want, Veto, Limit, Pairing, Duty, Caution, Hold, Question {
    Place place();
}
