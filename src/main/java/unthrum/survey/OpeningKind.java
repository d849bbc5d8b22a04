package unthrum.survey;

/** What a hole is for. */
public enum OpeningKind {
    DRAIN("drain"),
    BREATHER("breather"),
    VENT("vent"),
    PRESSURE_RELIEF_FLAP("pressure relief flap"),
    GAS_VENT("gas vent"),
    CABLE_HOLE("cable hole"),
    EMPTY_GROMMET_HOLE("empty grommet hole"),
    GROMMET("grommet"),
    TOOLING_HOLE("tooling hole"),
    SEAM_GAP("seam gap"),
    SERVICE_OPENING("service opening"),
    PEDAL_BOX_HOLE("pedal box hole");

    private final String word;

    OpeningKind(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
