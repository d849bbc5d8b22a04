package unthrum.effect;

/** Which end of a range is reckoned: the least gain, about, or the most. */
enum Sureness { LEAST, ABOUT, MOST }
