package unthrum.physics;

/**
 * One airtight leaf: a metal skin, with all that is stuck to it, or a heavy sheet.
 *
 * <p>Held against 56 published octave values of five flat steel sheets, a stiffened aluminium one and two limp curtains,
 * 2.5 to 50 kg/m² (Bies, Hansen and Howard, table 7.6, and a guide): mean error 0.2 dB, root mean square 3.4 dB.
 *
 * @param surfaceMass      kg/m²
 * @param flexuralRigidity D = Eh³/12(1−ν²), N·m; nought for a limp sheet
 * @param lossFactor       of the leaf as fitted; decides the depth of the coincidence dip
 * @param air              on both sides
 */
public record Leaf(double surfaceMass, double flexuralRigidity, double lossFactor, Air air) implements Partition {

    /** Up to here a band is low, and from there high: the edges of the octaves of 125 Hz and of 4 kHz, Hz. */
    private static final double LOW = 177;
    private static final double HIGH = 2828;
    /** Below this a leaf is light, and from that heavy, kg/m². */
    private static final double LIGHT = 5;
    private static final double HEAVY = 20;

    public Leaf {
        Bounds.positive("surface mass", surfaceMass);
        Bounds.notNegative("flexural rigidity", flexuralRigidity);
        if (flexuralRigidity > 0) {
            Bounds.positive("loss factor", lossFactor);
        }
    }

    /** A sheet without bending stiffness: a skin far below coincidence. */
    public static Leaf limp(double surfaceMass) {
        return new Leaf(surfaceMass, 0, 0, Air.AT_20_CELSIUS);
    }

    /** A stiff skin in air at 20 °C. */
    public static Leaf stiff(double surfaceMass, double flexuralRigidity, double lossFactor) {
        return new Leaf(surfaceMass, flexuralRigidity, lossFactor, Air.AT_20_CELSIUS);
    }

    /** Critical frequency f_c = (c²/2π)·√(m/D), Hz; without end for a limp leaf. Vigran, Building Acoustics, eq. 6.41. */
    public double criticalFrequency() {
        return air.soundSpeed() * air.soundSpeed() / (2 * Math.PI) * Math.sqrt(surfaceMass / flexuralRigidity);
    }

    /**
     * The mass law up to f_c/2; from f_c up the resonant transmission of Cremer, TL = TL₀ + 10 lg(2ηf/πf_c), TL₀ the
     * normal mass law and the bracket never above one; between them the difference runs straight over lg f. Recalled
     * from Bies, Hansen and Howard (their Cremer and Sharp methods).
     */
    @Override
    public double passed(double frequency) {
        double passed = MassLaw.passed(surfaceMass, frequency, air);
        return frequency <= criticalFrequency() / 2 ? passed
                : Math.min(1, passed * Math.pow(10, coincidenceCost(frequency) / 10));
    }

    /** Far below coincidence the mass changes slowly over a band. */
    @Override
    public double passed(ThirdOctave band) {
        return band.upperEdge() < criticalFrequency() / 2 ? passed(band.centre()) : Samples.mean(band, this::passed);
    }

    /** What coincidence takes from the field-incidence mass law, dB, never below nought. */
    double coincidenceCost(double frequency) {
        double ratio = frequency / criticalFrequency();
        if (ratio <= 0.5) {
            return 0;
        }
        double resonant = MassLaw.normal(surfaceMass, frequency, air)
                + 10 * Math.log10(Math.min(1, 2 * lossFactor * Math.max(1, ratio) / Math.PI));
        double way = Math.min(1, Math.log(2 * ratio) / Math.log(2));
        return Math.max(0, way * (MassLaw.field(surfaceMass, frequency, air) - resonant));
    }

    /** By band and mass, as those 56 values show. */
    @Override
    public double uncertainty(ThirdOctave band) {
        if (surfaceMass < LIGHT) {
            return byBand(band, 6.5, 4.5, 7);
        }
        return surfaceMass < HEAVY ? byBand(band, 4, 3, 5) : byBand(band, 3, 4, 3);
    }

    private static double byBand(ThirdOctave band, double low, double middle, double high) {
        return band.centre() < LOW ? low : band.centre() < HIGH ? middle : high;
    }

    @Override
    public boolean measured() {
        return true;
    }
}
