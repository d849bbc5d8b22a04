package unthrum.physics;

import java.util.OptionalDouble;

/**
 * One airtight leaf: a metal skin or a heavy sheet.
 *
 * @param surfaceMass      kg/m²
 * @param flexuralRigidity D = Eh³/12(1−ν²), N·m; nought for a limp sheet
 * @param lossFactor       of the leaf as fitted; decides the depth of the coincidence dip
 * @param air              on both sides
 */
public record Leaf(double surfaceMass, double flexuralRigidity, double lossFactor, Air air) implements Partition {
    public Leaf {
        Bounds.positive("surface mass", surfaceMass);
        Bounds.notNegative("flexural rigidity", flexuralRigidity);
        if (flexuralRigidity > 0) {
            Bounds.positive("loss factor", lossFactor);
        }
    }

    /** A sheet without bending stiffness: mass-loaded vinyl, or a skin far below coincidence. */
    public static Leaf limp(double surfaceMass) {
        return new Leaf(surfaceMass, 0, 0, Air.AT_20_CELSIUS);
    }

    /** A stiff skin in air at 20 °C. */
    public static Leaf stiff(double surfaceMass, double flexuralRigidity, double lossFactor) {
        return new Leaf(surfaceMass, flexuralRigidity, lossFactor, Air.AT_20_CELSIUS);
    }

    /** Critical frequency f_c = (c²/2π)·√(m/D), Hz; none for a limp leaf. Vigran, Building Acoustics, eq. 6.41. */
    public OptionalDouble criticalFrequency() {
        return flexuralRigidity == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(air.soundSpeed() * air.soundSpeed() / (2 * Math.PI)
                        * Math.sqrt(surfaceMass / flexuralRigidity));
    }

    /**
     * Field-incidence transmission loss, dB: the mass law up to f_c/2; from f_c up the resonant transmission of
     * Cremer, TL = TL₀ + 10 lg(2ηf/πf_c), TL₀ the normal mass law and the bracket never above one; between them the
     * correction runs straight over lg f. Recalled from Bies, Hansen and Howard (their Cremer and Sharp methods).
     */
    @Override
    public double transmissionLoss(double frequency) {
        double normal = MassLaw.normal(surfaceMass, frequency, air);
        return Math.max(0, normal + correction(frequency));
    }

    /** What coincidence takes from the field-incidence mass law, dB, never below nought. */
    double coincidenceCost(double frequency) {
        return Math.max(0, -MassLaw.FIELD_INCIDENCE_COST - correction(frequency));
    }

    private double correction(double frequency) {
        if (flexuralRigidity == 0) {
            return -MassLaw.FIELD_INCIDENCE_COST;
        }
        double ratio = frequency / criticalFrequency().getAsDouble();
        if (ratio <= 0.5) {
            return -MassLaw.FIELD_INCIDENCE_COST;
        }
        double resonant = 10 * Math.log10(Math.min(1, 2 * lossFactor * Math.max(1, ratio) / Math.PI));
        double way = Math.min(1, Math.log(2 * ratio) / Math.log(2));
        return (1 - way) * -MassLaw.FIELD_INCIDENCE_COST + way * resonant;
    }
}
