package unthrum.survey;

/** Which way a rib runs on the panel: across divides the first size, along divides the second. */
public enum Run {
    ACROSS, ALONG
}
