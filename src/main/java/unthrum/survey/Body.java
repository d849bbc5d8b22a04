package unthrum.survey;

/** The kind of body. */
public enum Body {
    VAN("van"),
    HIGH_ROOF_VAN("high-roof van"),
    HATCHBACK("hatchback"),
    SALOON("saloon"),
    ESTATE("estate"),
    PICK_UP("pick-up"),
    OFF_ROADER("off-roader"),
    BUS("bus");

    private final String word;

    Body(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
