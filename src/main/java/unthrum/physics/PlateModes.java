package unthrum.physics;

/**
 * Frequencies of flat rectangular plates, thin, undamped and free of stress.
 *
 * <p>f = √(D/m'') / 2π · √(βx⁴/a⁴ + βy⁴/b⁴ + 2 Hx Hy/(a²b²)) with β and H of the beam that is held like the plate's
 * edges. Hinged all round this is Navier's exact solution; otherwise it is Warburton's one-term Rayleigh estimate, an
 * upper bound that is 0.2 to 0.3 % high in the first mode of a clamped plate and up to 0.6 % in the next
 * three. Poisson's ratio enters only through D. Sources: Leissa, NASA SP-160; Warburton 1954; for springs along the
 * edges Warburton and Edney 1984; from memory.
 */
public final class PlateModes {

    private PlateModes() {}

    /** All edges hinged, m half-waves along the length and n along the width, Hz. */
    public static double hinged(Skin skin, Bay bay, int m, int n) {
        return frequency(skin, bay.length(), bay.width(), BeamMode.hinged(m), BeamMode.hinged(n));
    }

    /** All edges clamped, Hz. */
    public static double clamped(Skin skin, Bay bay, int m, int n) {
        return frequency(skin, bay.length(), bay.width(), BeamMode.clamped(m), BeamMode.clamped(n));
    }

    /**
     * All edges held against turning by k newton-metres per radian and metre of edge: 0 is a hinge, positive infinity
     * a clamp. Beside the two ends no outside value was available; between them the formula is an upper bound and
     * rises steadily.
     */
    public static double restrained(Skin skin, Bay bay, double k, int m, int n) {
        BeamMode x = BeamShape.restrained(m, k * bay.length() / skin.flexuralRigidity()).mode();
        BeamMode y = BeamShape.restrained(n, k * bay.width() / skin.flexuralRigidity()).mode();
        return frequency(skin, bay.length(), bay.width(), x, y);
    }

    static double frequency(Skin skin, double a, double b, BeamMode x, BeamMode y) {
        double along = x.beta() * x.beta() / (a * a);
        double across = y.beta() * y.beta() / (b * b);
        double sum = along * along + across * across + 2 * x.slope() * y.slope() / (a * a * b * b);
        return Math.sqrt(skin.flexuralRigidity() / skin.surfaceDensity() * sum) / (2 * Math.PI);
    }
}
