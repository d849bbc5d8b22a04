package unthrum.derive;

/** A fact that nobody stated, and what was taken for it. */
public record Assumed(String fact, String value, String because, String source) {
}
