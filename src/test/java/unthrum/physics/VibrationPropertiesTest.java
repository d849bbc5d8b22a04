package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every bay, whatever its size. */
class VibrationPropertiesTest {

    private static final double ROUNDING = 1e-9;

    private static Ringing ringing(double millimetres, double length, double width, double riseMillimetres) {
        return Ringing.of(Sheet.steel(millimetres / 1000).skin(), Bay.rolled(length, width, riseMillimetres / 1000))
                .value();
    }

    @Property(tries = 60)
    void aThickerFlatSheetRingsHigher(
            @ForAll @DoubleRange(min = 0.5, max = 2) double thickness,
            @ForAll @DoubleRange(min = 1.01, max = 2) double factor,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double length,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double width) {
        Band thin = ringing(thickness, length, width, 0).frequency();
        Band thick = ringing(thickness * factor, length, width, 0).frequency();
        assertThat(thick.lower()).isGreaterThan(thin.lower());
        assertThat(thick.upper()).isGreaterThan(thin.upper());
    }

    @Property(tries = 60)
    void addedMassNeverRaisesTheRange(
            @ForAll @DoubleRange(min = 0, max = 10) double mass,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double length,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double width,
            @ForAll @DoubleRange(min = 0, max = 9) double rise) {
        Skin skin = Sheet.steel(0.0008).skin();
        Bay bay = Bay.rolled(length, width, rise / 1000);
        Band bare = Ringing.of(skin, bay).value().frequency();
        Band loaded = Ringing.of(skin.loaded(mass), bay).value().frequency();
        assertThat(loaded.lower()).isLessThanOrEqualTo(bare.lower() * (1 + ROUNDING));
        assertThat(loaded.upper()).isLessThanOrEqualTo(bare.upper() * (1 + 1e-5));
    }

    @Property(tries = 60)
    void holdingTheEdgesHarderNeverLowersTheFirstMode(
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double length,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double width,
            @ForAll @DoubleRange(min = 0, max = 9) double rise) {
        Ringing ringing = ringing(0.8, length, width, rise);
        assertThat(ringing.first().keySet()).containsExactly(Support.values());
        double hingedSliding = ringing.first().get(Support.HINGED_SLIDING).frequency();
        double clampedSliding = ringing.first().get(Support.CLAMPED_SLIDING).frequency();
        double hingedFixed = ringing.first().get(Support.HINGED_FIXED).frequency();
        double clampedFixed = ringing.first().get(Support.CLAMPED_FIXED).frequency();
        assertThat(clampedSliding).isGreaterThanOrEqualTo(hingedSliding * (1 - ROUNDING));
        assertThat(hingedFixed).isGreaterThanOrEqualTo(hingedSliding * (1 - 1e-3));
        assertThat(clampedFixed).isGreaterThanOrEqualTo(hingedFixed * (1 - 0.01));
        assertThat(ringing.frequency().contains(hingedFixed)).isTrue();
    }

    @Property(tries = 60)
    void curvingABayNeverLowersItAndBendingShareStaysAShare(
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double length,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) double width,
            @ForAll @DoubleRange(min = 0.1, max = 9) double rise) {
        Ringing flat = ringing(0.8, length, width, 0);
        Ringing curved = ringing(0.8, length, width, rise);
        assertThat(curved.frequency().lower()).isGreaterThanOrEqualTo(flat.frequency().lower() * (1 - ROUNDING));
        assertThat(curved.leastBendingShare()).isBetween(0.0, 1.0);
        assertThat(curved.greatestBendingShare()).isBetween(curved.leastBendingShare(), 1.0);
        assertThat(flat.leastBendingShare()).isEqualTo(1);
    }

    @Property(tries = 60)
    void moreCoverageNeverLowersDamping(
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double length,
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double width,
            @ForAll @IntRange(max = 3) int support,
            @ForAll @DoubleRange(min = 0, max = 1) double less,
            @ForAll @DoubleRange(min = 0, max = 1) double more) {
        Bay bay = Bay.crowned(length, width, 0.002);
        Coverage coverage = Coverage.of(Sheet.steel(0.0008).skin(), bay, Support.values()[support]).value();
        double small = Damping.modalLossFactor(0.005, 0.6, coverage.share(Math.min(less, more)), 0.2);
        double large = Damping.modalLossFactor(0.005, 0.6, coverage.share(Math.max(less, more)), 0.2);
        assertThat(large).isGreaterThanOrEqualTo(small);
        assertThat(small).isGreaterThanOrEqualTo(0.005);
        assertThat(coverage.share(1)).isBetween(1 - ROUNDING, 1 + ROUNDING);
        assertThat(coverage.share(0)).isZero();
    }

    /** The best loss factor that any core gives: βY/(2 + Y + 2/X), X = 1/√((1 + Y)(1 + β²)) (Ungar; from memory). */
    private static double best(Sheet skin, double beta, double core, Sheet facing) {
        double k1 = skin.planeModulus() * skin.thickness();
        double k3 = facing.planeModulus() * facing.thickness();
        double d = core + (skin.thickness() + facing.thickness()) / 2;
        double y = k1 * k3 * d * d / ((k1 + k3) * (skin.flexuralRigidity() + facing.flexuralRigidity()));
        return beta * y / (2 + y + 2 * Math.sqrt((1 + y) * (1 + beta * beta)));
    }

    @Property
    void aCompositeNeverLosesMoreThanItsMaterialNorThanTheBestCore(
            @ForAll @DoubleRange(min = 1e4, max = 1e8) double shear,
            @ForAll @DoubleRange(min = 0.05, max = 1.5) double loss,
            @ForAll @DoubleRange(min = 0.3, max = 4) double core,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double cover,
            @ForAll @DoubleRange(min = 10, max = 5000) double waveNumberSquared) {
        Sheet skin = Sheet.steel(0.0008);
        Sheet facing = Sheet.aluminium(cover / 1000);
        double constrained = Damping.constrained(
                        skin, new Viscoelastic(shear, loss), core / 1000, facing, waveNumberSquared)
                .lossFactor();
        assertThat(constrained).isPositive().isLessThan(loss);
        assertThat(constrained)
                .isLessThanOrEqualTo(best(skin, loss, core / 1000, facing) * (1 + ROUNDING));
        assertThat(Damping.free(skin, shear, loss, core / 1000).lossFactor()).isPositive().isLessThan(loss);
    }
}
