package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("What a skin and a barrier hold back")
class TransmissionLossTest {
    private static final Leaf SKIN = stiff(0.0008, 210e9, 0.3, 6.28, Air.AT_20_CELSIUS);

    private static Leaf stiff(double thickness, double modulus, double poisson, double mass, Air air) {
        double rigidity = modulus * Math.pow(thickness, 3) / (12 * (1 - poisson * poisson));
        return new Leaf(mass, rigidity, 0.01, air);
    }

    private static double octave(Partition partition, double centre) {
        int middle = ThirdOctave.of(centre).ordinal();
        double transmission = 0;
        for (int i = middle - 1; i <= middle + 1; i++) {
            transmission += CompositeLoss.transmission(partition.transmissionLoss(ThirdOctave.values()[i])) / 3;
        }
        return CompositeLoss.loss(transmission);
    }

    @Nested
    @DisplayName("The mass law")
    class Mass {
        @ParameterizedTest(name = "{0}: {2} kg/m² at {3} Hz, {1}")
        @CsvFileSource(resources = "mass-law.csv", numLinesToSkip = 1)
        @DisplayName("gives the published figures")
        void published(String id, String law, double mass, double frequency, double angle, double density, double speed,
                double expected, double tolerance) {
            Air air = new Air(density, speed);
            double loss = law.equals("field")
                    ? MassLaw.field(mass, frequency, air)
                    : MassLaw.oblique(mass, frequency, Math.toRadians(angle), air);

            assertThat(loss).isCloseTo(expected, within(tolerance));
        }

        @Test
        @DisplayName("never becomes negative, though its field correction would make it so")
        void neverNegative() {
            assertThat(MassLaw.field(0.1, 20, Air.AT_20_CELSIUS)).isZero();
        }

        @Test
        @DisplayName("refuses a mass below nought")
        void nonsense() {
            assertThatThrownBy(() -> MassLaw.field(-4, 500, Air.AT_20_CELSIUS)).hasMessageContaining("surface mass is -4.0");
        }
    }

    @Nested
    @DisplayName("A single leaf")
    class Single {
        @ParameterizedTest(name = "{0}: {1} {2} m")
        @CsvFileSource(resources = "coincidence.csv", numLinesToSkip = 1)
        @DisplayName("has the published critical frequency")
        void criticalFrequency(String id, String material, double thickness, double modulus, double density,
                double poisson, double speed, double expected, double tolerance) {
            Leaf leaf = stiff(thickness, modulus, poisson, density * thickness, new Air(1.21, speed));

            assertThat(leaf.criticalFrequency().orElseThrow()).isCloseTo(expected, Percentage.withPercentage(tolerance));
        }

        @ParameterizedTest(name = "{0}: {1} at {7} Hz measured {8} dB")
        @CsvFileSource(resources = "measured-panels.csv", numLinesToSkip = 1)
        @DisplayName("lies near handbook measurements on steel, coincidence dip included")
        void measured(String id, String panel, double thickness, double modulus, double poisson, double mass,
                double lossFactor, double octave, double measured, double tolerance) {
            Leaf leaf = stiff(thickness, modulus, poisson, mass, Air.AT_20_CELSIUS);

            assertThat(octave(leaf, octave)).isCloseTo(measured, within(tolerance));
        }

        @Test
        @DisplayName("that is limp knows no coincidence")
        void limp() {
            assertThat(Leaf.limp(4).criticalFrequency()).isEmpty();
            assertThat(Leaf.limp(4).transmissionLoss(12000)).isEqualTo(MassLaw.field(4, 12000, Air.AT_20_CELSIUS));
        }

        @Test
        @DisplayName("dips less at coincidence when it is damped: 10 dB for ten times the loss factor (Cremer)")
        void dampedDip() {
            double critical = SKIN.criticalFrequency().orElseThrow();
            Leaf damped = new Leaf(SKIN.surfaceMass(), SKIN.flexuralRigidity(), 0.1, Air.AT_20_CELSIUS);

            assertThat(damped.transmissionLoss(critical) - SKIN.transmissionLoss(critical)).isCloseTo(10, within(1e-9));
        }

        @Test
        @DisplayName("blocks 20 lg(fm) + 10 lg(loss factor) - 45 at its critical frequency (Sharp; constant from memory)")
        void depthOfDip() {
            double critical = SKIN.criticalFrequency().orElseThrow();
            double sharp = 20 * Math.log10(critical * SKIN.surfaceMass()) + 10 * Math.log10(SKIN.lossFactor()) - 45;

            assertThat(SKIN.transmissionLoss(critical)).isCloseTo(sharp, within(1.0));
        }

        @Test
        @DisplayName("has in a band what it has at the centre, where the mass law runs straight")
        void band() {
            assertThat(SKIN.transmissionLoss(ThirdOctave.HZ_500))
                    .isCloseTo(SKIN.transmissionLoss(ThirdOctave.HZ_500.centre()), within(0.05));
        }

        @Test
        @DisplayName("is outside the range of the formulas near its first resonance")
        void outsideItsRange() {
            assertThat(SKIN.transmissionLoss(ThirdOctave.HZ_125, 80)).isEmpty();
            assertThat(SKIN.transmissionLoss(ThirdOctave.HZ_500, 80).orElseThrow())
                    .isEqualTo(SKIN.transmissionLoss(ThirdOctave.HZ_500));
        }
    }

    @Nested
    @DisplayName("A barrier that floats on a decoupler")
    class Floating {
        private final DoubleLeaf gap = new DoubleLeaf(Leaf.limp(6.28), Leaf.limp(5), Decoupler.air(0.02));

        @ParameterizedTest(name = "{0}: {1} and {2} kg/m²")
        @CsvFileSource(resources = "double-leaf-resonance.csv", numLinesToSkip = 1)
        @DisplayName("has the published mass-spring-mass resonance")
        void resonance(String id, double m1, double m2, double depth, double stiffness, double expected, double tolerance) {
            Decoupler spring = new Decoupler(depth, stiffness, 0.1);

            assertThat(new DoubleLeaf(Leaf.limp(m1), Leaf.limp(m2), spring).resonance())
                    .isCloseTo(expected, within(tolerance));
        }

        @Test
        @DisplayName("on air resonates within 0.2 % of the textbook constant 60 (Rai; T4-D07: 254.29 Hz)")
        void airGap() {
            assertThat(gap.resonance()).isCloseTo(254.29, Percentage.withPercentage(0.2));
        }

        @Test
        @DisplayName("far below resonance blocks as both masses stuck together")
        void below() {
            double frequency = gap.resonance() / 5;

            assertThat(gap.transmissionLoss(frequency))
                    .isCloseTo(MassLaw.field(11.28, frequency, Air.AT_20_CELSIUS), within(0.5));
        }

        @Test
        @DisplayName("above resonance adds both leaves and 20 lg(fd) - 29 (Sharp, in Bies, Hansen and Howard)")
        void between() {
            double frequency = 1250;
            double leaves = Leaf.limp(6.28).transmissionLoss(frequency) + Leaf.limp(5).transmissionLoss(frequency);

            assertThat(gap.transmissionLoss(frequency))
                    .isCloseTo(leaves + 20 * Math.log10(frequency * 0.02) - 29, within(1.0));
        }

        @Test
        @DisplayName("above the cavity limit adds both leaves and 6 dB (Sharp)")
        void cavity() {
            double frequency = 8000;
            double leaves = Leaf.limp(6.28).transmissionLoss(frequency) + Leaf.limp(5).transmissionLoss(frequency);

            assertThat(gap.cavityLimit()).isCloseTo(55 / 0.02, Percentage.withPercentage(1)); // NBS-GCR-80-250: 55/d
            assertThat(gap.transmissionLoss(frequency)).isCloseTo(leaves + 6, within(0.5));
        }

        @Test
        @DisplayName("at resonance blocks less than the same barrier stuck to the skin")
        void worseAtResonance() {
            ThirdOctave band = ThirdOctave.of(gap.resonance());

            assertThat(gap.transmissionLoss(band)).isLessThan(Leaf.limp(11.28).transmissionLoss(band) - 6);
        }

        @Test
        @DisplayName("dips less at resonance on a lossy spring")
        void lossySpring() {
            DoubleLeaf lossy = new DoubleLeaf(gap.skin(), gap.barrier(), new Decoupler(0.02, gap.decoupler().stiffness(), 0.4));

            assertThat(lossy.transmissionLoss(gap.resonance())).isGreaterThan(gap.transmissionLoss(gap.resonance()) + 6);
        }

        @Test
        @DisplayName("loses at coincidence what its skin alone loses there")
        void coincidence() {
            double critical = SKIN.criticalFrequency().orElseThrow();
            DoubleLeaf limp = new DoubleLeaf(Leaf.limp(6.28), gap.barrier(), gap.decoupler());
            DoubleLeaf stiff = new DoubleLeaf(SKIN, gap.barrier(), gap.decoupler());

            assertThat(limp.transmissionLoss(critical) - stiff.transmissionLoss(critical))
                    .isCloseTo(Leaf.limp(6.28).transmissionLoss(critical) - SKIN.transmissionLoss(critical), within(0.01));
        }

        @Test
        @DisplayName("rings lower on fibre than on air, by the square root of 1.4, and higher on stiff foam")
        void springs() {
            double air = Decoupler.air(0.01).stiffness();

            assertThat(air / Decoupler.openCell(0.01, 0, 0.1).stiffness()).isCloseTo(1.4, within(1e-9));
            assertThat(Decoupler.openCell(0.01, 40e3, 0.1).stiffness())
                    .isCloseTo(Decoupler.openCell(0.01, 0, 0.1).stiffness() + 4e6, within(1.0));
            assertThat(Decoupler.closedCell(0.01, 300e3, 0.1).stiffness()).isCloseTo(30e6, within(1.0)).isGreaterThan(air);
            assertThat(Decoupler.closedCell(0.01, 1e3, 0.1).stiffness()).isGreaterThan(0.7 * air);
        }
    }
}
