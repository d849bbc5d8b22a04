package unthrum.survey;

/** Rust on the panel. */
public enum Rust {
    NONE, SURFACE, LIVE
}
