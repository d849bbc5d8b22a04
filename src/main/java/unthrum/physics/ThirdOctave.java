package unthrum.physics;

import java.util.List;

/**
 * The third-octave bands from 10 Hz to 20 kHz, with their A-weighting.
 *
 * <p>Bands: IEC 61260-1, base-ten system: exact centre f = 1000·10^(n/10) Hz, edges f·10^(∓1/20).
 * Weighting: the analytical form of IEC 61672-1, Annex E, taken at the exact centre; the table printed in that
 * standard rounds it to 0.1 dB. Formulas belong at {@link #centre()}, labels at {@link #nominal()}: at the nominal
 * frequency the weighting is up to 0.28 dB off.
 */
public enum ThirdOctave {
    HZ_10(10), HZ_12_5(12.5), HZ_16(16), HZ_20(20), HZ_25(25), HZ_31_5(31.5), HZ_40(40), HZ_50(50), HZ_63(63),
    HZ_80(80), HZ_100(100), HZ_125(125), HZ_160(160), HZ_200(200), HZ_250(250), HZ_315(315), HZ_400(400),
    HZ_500(500), HZ_630(630), HZ_800(800), HZ_1000(1000), HZ_1250(1250), HZ_1600(1600), HZ_2000(2000),
    HZ_2500(2500), HZ_3150(3150), HZ_4000(4000), HZ_5000(5000), HZ_6300(6300), HZ_8000(8000), HZ_10000(10000),
    HZ_12500(12500), HZ_16000(16000), HZ_20000(20000);

    /** The bands in which panels are told, 25 Hz to 5 kHz. */
    public static final List<ThirdOctave> HEARD = List.of(values()).subList(HZ_25.ordinal(), HZ_5000.ordinal() + 1);

    /** Position of the 1 kHz band, from which IEC 61260-1 counts. */
    private static final int ONE_KILOHERTZ = 20;
    private static final double HALF_BAND = Math.pow(10, 0.05);

    private final double nominal;
    private final double centre;
    private final double weighting;

    ThirdOctave(double nominal) {
        this.nominal = nominal;
        this.centre = 1000 * Math.pow(10, (ordinal() - ONE_KILOHERTZ) / 10.0);
        this.weighting = aWeighting(centre);
    }

    /** The rounded frequency by which the band is called, Hz. */
    public double nominal() {
        return nominal;
    }

    /** Exact mid-band frequency, Hz. */
    public double centre() {
        return centre;
    }

    /** Lower band edge, Hz. */
    public double lowerEdge() {
        return centre / HALF_BAND;
    }

    /** Upper band edge, Hz. */
    public double upperEdge() {
        return centre * HALF_BAND;
    }

    /** A-weighting of this band, dB. */
    public double aWeighting() {
        return weighting;
    }

    /**
     * The band in which a frequency lies.
     *
     * @throws IllegalArgumentException outside 8.9 Hz to 22.4 kHz
     */
    public static ThirdOctave of(double frequency) {
        double index = ONE_KILOHERTZ + 10 * Math.log10(Bounds.positive("frequency", frequency) / 1000);
        int nearest = (int) Math.round(index);
        if (nearest < 0 || nearest >= values().length) {
            throw new IllegalArgumentException("frequency is " + frequency + " Hz, expected 8.9 Hz to 22.4 kHz");
        }
        return values()[nearest];
    }

    /**
     * A-weighting A(f) = 20 lg R(f) + 2.000 dB at any frequency, with
     * R = f₄²f⁴ / [(f²+f₁²)·√((f²+f₂²)(f²+f₃²))·(f²+f₄²)] and the pole frequencies of IEC 61672-1, Annex E.
     *
     * @param frequency Hz
     */
    public static double aWeighting(double frequency) {
        double square = Math.pow(Bounds.positive("frequency", frequency), 2);
        double response = squared(12194.217) * square * square
                / ((square + squared(20.598997)) * (square + squared(12194.217))
                * Math.sqrt((square + squared(107.65265)) * (square + squared(737.86223))));
        return 20 * Math.log10(response) + 2.000;
    }

    private static double squared(double value) {
        return value * value;
    }
}
