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
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a skin and a barrier hold back")
class TransmissionLossTest {
    private static final Leaf SKIN = stiff(0.0008, 210e9, 0.3, 6.28, Air.AT_20_CELSIUS);

    private static Leaf stiff(double thickness, double modulus, double poisson, double mass, Air air) {
        double rigidity = modulus * Math.pow(thickness, 3) / (12 * (1 - poisson * poisson));
        return new Leaf(mass, rigidity, 0.01, air);
    }

    @Nested
    @DisplayName("The mass law")
    class Mass {
        @ParameterizedTest(name = "{0}: {2} kg/m² at {3} Hz, {1}")
        @CsvFileSource(resources = "mass-law.csv", numLinesToSkip = 1)
        @DisplayName("gives the published figures")
        void published(String id, double mass, double frequency, double angle, double density, double speed,
                double expected, double tolerance) {
            Air air = new Air(density, speed);
            assertThat(MassLaw.oblique(mass, frequency, Math.toRadians(angle), air)).isCloseTo(expected, within(tolerance));
        }

        /** 4.0 dB for octaves and 5.5 dB for third octaves (Bies, Hansen and Howard), 5 dB (Norton and Karczub). */
        @Test
        @DisplayName("costs 5.5 dB in a field of sound, as third octaves do, and nothing where all passes anyhow")
        void field() {
            assertThat(MassLaw.normal(7, 4000, Air.AT_20_CELSIUS) - MassLaw.field(7, 4000, Air.AT_20_CELSIUS))
                    .isCloseTo(5.5, within(0.15));
            assertThat(MassLaw.field(0.1, 20, Air.AT_20_CELSIUS)).isBetween(0.0, 0.01);
            assertThat(MassLaw.field(0, 20, Air.AT_20_CELSIUS)).isZero();
        }

        /** Angle by angle, the midpoint rule with ten thousand steps. */
        @ParameterizedTest(name = "{0} kg/m² at {1} Hz")
        @CsvSource({"2, 50", "6.28, 125", "10, 1000", "20, 5000"})
        @DisplayName("in a field is the mean over all angles up to 80.1°, each with its share of the power")
        void meanOverAngles(double mass, double frequency) {
            double limit = Math.acos(Math.sqrt(0.0295));
            double passed = 0;
            double weight = 0;
            for (int i = 0; i < 10_000; i++) {
                double angle = limit * (i + 0.5) / 10_000;
                double share = Math.sin(angle) * Math.cos(angle);
                passed += share * CompositeLoss.transmission(MassLaw.oblique(mass, frequency, angle, Air.AT_20_CELSIUS));
                weight += share;
            }
            assertThat(MassLaw.field(mass, frequency, Air.AT_20_CELSIUS))
                    .isCloseTo(CompositeLoss.loss(passed / weight), within(1e-4));
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

            assertThat(leaf.criticalFrequency()).isCloseTo(expected, Percentage.withPercentage(tolerance));
        }

        @Test
        @DisplayName("that is limp knows no coincidence")
        void limp() {
            assertThat(Leaf.limp(4).criticalFrequency()).isInfinite();
            assertThat(Leaf.limp(4).transmissionLoss(12000)).isEqualTo(MassLaw.field(4, 12000, Air.AT_20_CELSIUS));
        }

        @Test
        @DisplayName("dips less at coincidence when it is damped: 10 dB for ten times the loss factor (Cremer)")
        void dampedDip() {
            double critical = SKIN.criticalFrequency();
            Leaf damped = new Leaf(SKIN.surfaceMass(), SKIN.flexuralRigidity(), 0.1, Air.AT_20_CELSIUS);

            assertThat(damped.transmissionLoss(critical) - SKIN.transmissionLoss(critical)).isCloseTo(10, within(1e-9));
        }

        @Test
        @DisplayName("blocks 20 lg(fm) + 10 lg(loss factor) - 45 at its critical frequency (Sharp; constant from memory)")
        void depthOfDip() {
            double critical = SKIN.criticalFrequency();
            double sharp = 20 * Math.log10(critical * SKIN.surfaceMass()) + 10 * Math.log10(SKIN.lossFactor()) - 45;

            assertThat(SKIN.transmissionLoss(critical)).isCloseTo(sharp, within(1.0));
        }

        @Test
        @DisplayName("has in a band what it has at the centre, where the mass law runs straight")
        void band() {
            assertThat(SKIN.transmissionLoss(ThirdOctave.HZ_500))
                    .isCloseTo(SKIN.transmissionLoss(ThirdOctave.HZ_500.centre()), within(0.05));
        }
    }

    @Nested
    @DisplayName("A barrier that floats on a decoupler")
    class Floating {
        private final DoubleLeaf felt = floated(Decoupler.fibre(0.02, 0));
        private final DoubleLeaf foam = floated(Decoupler.closedCell(0.006, 230e3, 33, 0.15));

        private static DoubleLeaf floated(Decoupler decoupler) {
            return new DoubleLeaf(Leaf.limp(6.28), Leaf.limp(4), decoupler, Bridges.NONE);
        }

        @ParameterizedTest(name = "{0}: {1} and {2} kg/m²")
        @CsvFileSource(resources = "double-leaf-resonance.csv", numLinesToSkip = 1)
        @DisplayName("has the published mass-spring-mass resonance")
        void resonance(String id, double m1, double m2, double depth, double stiffness, double expected, double tolerance) {
            Decoupler spring = new Decoupler(depth, stiffness * depth, 0, 0.1, 33, false);

            assertThat(new DoubleLeaf(Leaf.limp(m1), Leaf.limp(m2), spring, Bridges.NONE).resonance())
                    .isCloseTo(expected, within(tolerance));
        }

        /** Constant 50.7 for isothermal air: T4-D04. */
        @Test
        @DisplayName("on loose fibre resonates by the textbook constant 50.7")
        void isothermal() {
            assertThat(felt.resonance()).isCloseTo(50.66 * Math.sqrt(10.28 / (6.28 * 4 * 0.02)),
                    Percentage.withPercentage(0.3));
        }

        @Test
        @DisplayName("far below resonance blocks as both masses stuck together")
        void below() {
            double frequency = foam.resonance() / 5;

            assertThat(foam.transmissionLoss(frequency))
                    .isCloseTo(MassLaw.field(10.28, frequency, Air.AT_20_CELSIUS), within(0.5));
        }

        /** Normal incidence, leaves m₁ and m₂ on a spring: 20 lg(ω³ m₁ m₂ / 2ρ₀c s), less 5.5 dB for the field. */
        @Test
        @DisplayName("well above it adds both leaves and what the spring gives (Fahy and Gardonio)")
        void between() {
            DoubleLeaf light = floated(Decoupler.closedCell(0.006, 230e3, 1, 0.05));
            double omega = 2 * Math.PI * 6 * light.resonance();
            double leaves = 20 * Math.log10(Math.pow(omega, 3) * 6.28 * 4
                    / (2 * Air.AT_20_CELSIUS.impedance() * light.decoupler().stiffness()));

            assertThat(light.transmissionLoss(6 * light.resonance())).isCloseTo(leaves - 5.5, within(0.5));
        }

        @Test
        @DisplayName("at resonance blocks less than the bare skin, let alone the same barrier stuck to it")
        void worseAtResonance() {
            ThirdOctave band = ThirdOctave.of(foam.resonance());

            assertThat(foam.transmissionLoss(foam.resonance())).isLessThan(Leaf.limp(6.28).transmissionLoss(band) - 8);
            assertThat(foam.transmissionLoss(foam.resonance())).isLessThan(Leaf.limp(10.28).transmissionLoss(band) - 12);
            assertThat(foam.transmissionLoss(band)).isLessThan(Leaf.limp(6.28).transmissionLoss(band) - 2);
        }

        @Test
        @DisplayName("dips less at resonance on a lossy spring")
        void lossySpring() {
            DoubleLeaf lossy = floated(Decoupler.closedCell(0.006, 230e3, 33, 0.6));

            assertThat(lossy.transmissionLoss(foam.resonance())).isGreaterThan(foam.transmissionLoss(foam.resonance()) + 6);
        }

        @Test
        @DisplayName("rings lower on fibre than on foam of the same skeleton's stiffness, which holds its gas in it")
        void springs() {
            double isothermal = Air.AT_20_CELSIUS.isothermalModulus() / 0.01;

            assertThat(Decoupler.openCell(0.01, 40e3, 30, 0.1).stiffness()).isCloseTo(isothermal + 4e6, within(1.0));
            assertThat(Decoupler.fibre(0.01, 40e3).stiffness()).isCloseTo(isothermal + 4e6, within(1.0));
            assertThat(Decoupler.closedCell(0.01, 300e3, 33, 0.1).stiffness()).isCloseTo(30e6, within(1.0));
            assertThat(Decoupler.closedCell(0.01, 1e3, 33, 0.1).stiffness()).isCloseTo(isothermal, within(1.0));
        }

        /** A barrier of 4 kg/m² on foam of 230 kPa over 6 mm rings by itself at √(s/m)/2π = 493 Hz. */
        @Test
        @DisplayName("on a shaken skin moves with it far below its own resonance, more at it, and hardly above")
        void shaken() {
            assertThat(foam.carried(50)).isCloseTo(1, within(0.05));
            assertThat(foam.carried(493)).isCloseTo(1 / (0.15 * 0.15) + 1, within(0.5));
            assertThat(foam.carried(4930)).isCloseTo(1.04e-4, within(1e-5));
        }
    }

    /** Sharp (1973), recalled from Fahy and Gardonio and from Bies, Hansen and Howard. */
    @Nested
    @DisplayName("Ties between two leaves")
    class Ties {
        private final Leaf board = Leaf.stiff(9, 490, 0.02);
        private final double critical = board.criticalFrequency();

        @Test
        @DisplayName("in lines 0.6 m apart cap the gain at 10 lg(b fc) + 20 lg(m1/(m1+m2)) - 18")
        void lines() {
            double cap = -10 * Math.log10(new Bridges(1 / 0.6, 0).passed(board, board));

            assertThat(cap).isCloseTo(10 * Math.log10(0.6 * critical) + 20 * Math.log10(0.5) - 18, within(0.05));
        }

        @Test
        @DisplayName("on points 0.6 m apart cap the gain at 20 lg(e fc) + 20 lg(m1/(m1+m2)) - 45")
        void points() {
            double cap = -10 * Math.log10(new Bridges(0, 1 / 0.36).passed(board, board));

            assertThat(cap).isCloseTo(20 * Math.log10(0.6 * critical) + 20 * Math.log10(0.5) - 45, within(0.3));
        }

        @Test
        @DisplayName("do nothing to a limp sheet")
        void limp() {
            assertThat(new Bridges(5, 50).passed(board, Leaf.limp(4))).isZero();
        }
    }
}
