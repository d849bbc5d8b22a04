package unthrum.physics;

/** What drives the panels of a vehicle, and how strongly a bay answers to it. */
public final class Excitation {

    private Excitation() {}

    /** Firing frequency of a four-stroke engine, Hz: each cylinder fires every second turn. */
    public static double firingFrequency(double revolutionsPerMinute, int cylinders) {
        return revolutionsPerMinute / 60 * cylinders / 2;
    }

    /**
     * How many modes of a bay to expect in a band. Each mode (m, n) has a range from hinged to clamped edges (free to
     * slide); it counts by the share of that range inside the band.
     */
    public static double expectedModes(Skin skin, Bay bay, Band band) {
        double modes = 0;
        for (int m = 1; PlateModes.hinged(skin, bay, m, 1) <= band.upper(); m++) {
            for (int n = 1; PlateModes.hinged(skin, bay, m, n) <= band.upper(); n++) {
                double soft = ShellModes.sliding(skin, bay, false, m, n).frequency();
                double stiff = ShellModes.sliding(skin, bay, true, m, n).frequency();
                modes += new Band(soft, Math.max(soft, stiff)).shareInside(band);
            }
        }
        return modes;
    }

    /**
     * How strongly a bay answers to noise that fills a band, for ranking bays against each other: expected modes in
     * the band over mass per area, m²/kg. In statistical energy analysis (Lyon and DeJong, from memory) modes driven
     * alike hold equal energy, so area times mean square velocity, which sets the sound radiated, goes with modes over
     * mass per area. It is no level: radiation efficiency, distance to the ear and damping are left out.
     */
    public static double drive(Skin skin, Bay bay, Band band) {
        return expectedModes(skin, bay, band) / skin.surfaceDensity();
    }
}
