package unthrum.knowledge;

import java.util.Locale;

/** How much a want counts when layups are compared; the numbers stand in the thresholds. */
public enum Weight {
    STRONG, FAIR, SLIGHT;

    /** The id of the threshold that holds its number. */
    public String threshold() {
        return "weight/" + name().toLowerCase(Locale.ROOT);
    }
}
