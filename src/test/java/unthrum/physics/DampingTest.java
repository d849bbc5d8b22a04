package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.physics.Damping.Composite;

@DisplayName("What a damping layer makes of a skin")
class DampingTest {

    /** A strip that bends one way: Poisson's ratio 0, as the beam formulas have it. */
    private static Sheet strip(double modulus, double millimetres) {
        return new Sheet(modulus, 0, 7850, millimetres / 1000);
    }

    @Nested
    @DisplayName("as a free layer (Oberst)")
    class Free {

        /** Oberst 1952 as in ASTM E756, equations from memory; numbers computed for this project's check values. */
        @ParameterizedTest
        @CsvSource({
            "1e9,2,0.5,0.112317,1.292812",
            "2e9,2,0.3,0.108440,1.580863",
            "0.5e9,3,0.4,0.114556,1.404711",
            "5e9,1,0.2,0.045498,1.302879"
        })
        @DisplayName("loss factor and stiffness follow the two-layer equations")
        void composite(double modulus, double ratio, double loss, double lossFactor, double stiffer) {
            Sheet skin = strip(210e9, 1);
            Composite composite = Damping.free(skin, modulus, loss, ratio / 1000);
            assertThat(composite.lossFactor()).isCloseTo(lossFactor, withinPercentage(1e-3));
            assertThat(composite.flexuralRigidity() / skin.flexuralRigidity())
                    .isCloseTo(stiffer, withinPercentage(1e-3));
        }

        /** ASTM E756 inverse (from memory): these give back E = 1.5 GPa and loss factor 0.3. */
        @Test
        @DisplayName("the standard's inverse gives back the material")
        void inverse() {
            Composite composite = Damping.free(strip(210e9, 0.8), 1.5e9, 0.3, 0.002);
            double loadRatio = 1 + 1500 * 2 / (7850 * 0.8);
            double stiffer = composite.flexuralRigidity() / strip(210e9, 0.8).flexuralRigidity();
            assertThat(composite.lossFactor()).isCloseTo(0.12725858, withinPercentage(1e-4));
            assertThat(Math.sqrt(stiffer / loadRatio)).isCloseTo(1.0902112, withinPercentage(1e-4));
        }

        @Test
        @DisplayName("it is as stiff as a laminate of the two layers")
        void laminate() {
            Sheet skin = strip(205e9, 0.8);
            Sheet layer = new Sheet(2e9, 0, 1500, 0.002);
            assertThat(Damping.free(skin, 2e9, 0.3, 0.002).flexuralRigidity())
                    .isCloseTo(Skin.laminate(List.of(skin, layer)).flexuralRigidity(), withinPercentage(1e-6));
        }
    }

    @Nested
    @DisplayName("as a soft core under a stiff cover (Ross, Kerwin, Ungar)")
    class Constrained {

        private static final double WAVE_NUMBER_SQUARED = 1003.5901;

        /** Kerwin 1959, Nashif et al. 1985, from memory; numbers computed for this project's check values. */
        @ParameterizedTest
        @CsvSource({
            "0.8,1.5,0.1,70e9,1e6,0.8,0.146245,0.230874",
            "0.8,0.05,0.8,210e9,1e6,1,0.289878,0.299426",
            "0.8,2,0.3,70e9,3e6,0.6,0.272056,0.330935"
        })
        @DisplayName("loss factor, and the best that any core stiffness gives")
        void composite(
                double base, double core, double cover, double coverModulus, double shear, double beta, double loss,
                double best) {
            Sheet skin = strip(210e9, base);
            Sheet facing = strip(coverModulus, cover);
            Composite composite = Damping.constrained(
                    skin, new Viscoelastic(shear, beta), core / 1000, facing, WAVE_NUMBER_SQUARED);
            assertThat(composite.lossFactor()).isCloseTo(loss, withinPercentage(1e-3));
            assertThat(best(skin, beta, core / 1000, facing)).isCloseTo(best, withinPercentage(1e-2));
        }

        /** The best over core stiffnesses in steps of 1 %. */
        private static double best(Sheet skin, double beta, double core, Sheet facing) {
            return DoubleStream.iterate(1e3, g -> g < 1e10, g -> g * 1.01).map(g -> Damping.constrained(
                    skin, new Viscoelastic(g, beta), core, facing, WAVE_NUMBER_SQUARED).lossFactor()).max().orElseThrow();
        }

        /** Worked example of laminated glass in a public program, seen in print: Y = 5.07, at best 0.423. */
        @Test
        @DisplayName("the printed symmetric sandwich has at best 0.423 of the core's loss")
        void printed() {
            Sheet pane = strip(70e9, 5);
            assertThat(best(pane, 1e-4, 0.0015, pane) / 1e-4).isCloseTo(0.423, within(5e-4));
        }

        /** Johnson and Kienholz, AIAA J. 20 (1982) 1284, sandwich plate; values from memory. */
        @ParameterizedTest
        @CsvSource({
            "1,1,60.3,0.190", "2,1,115.4,0.203", "1,2,130.6,0.199", "2,2,178.7,0.181", "3,1,195.7,0.174"
        })
        @DisplayName("a hinged sandwich plate rings and dies away as published")
        void sandwichPlate(int m, int n, double frequency, double loss) {
            Sheet face = new Sheet(68.9e9, 0.3, 2740, 0.000762);
            double k2 = Math.pow(m * Math.PI / 0.348, 2) + Math.pow(n * Math.PI / 0.3048, 2);
            Composite plate = Damping.constrained(face, new Viscoelastic(0.896e6, 0.5), 0.000254, face, k2);
            double mass = 2 * face.surfaceDensity() + 999 * 0.000254;
            double ringing = k2 * Math.sqrt(plate.flexuralRigidity() / mass) / (2 * Math.PI);
            assertThat(ringing).isCloseTo(frequency, withinPercentage(0.3));
            assertThat(plate.lossFactor()).isCloseTo(loss, withinPercentage(1));
        }
    }

    @Nested
    @DisplayName("on a whole bay")
    class WholeBay {

        @Test
        @DisplayName("the wave number of a hinged flat mode is that of its half-waves")
        void waveNumber() {
            Skin skin = Sheet.steel(0.0008).skin();
            double frequency = PlateModes.hinged(skin, Bay.flat(0.6, 0.4), 2, 1);
            assertThat(Damping.waveNumberSquared(skin, frequency))
                    .isCloseTo(Math.pow(2 * Math.PI / 0.6, 2) + Math.pow(Math.PI / 0.4, 2), withinPercentage(1e-9));
        }

        @Test
        @DisplayName("ten times the loss factor takes 20 dB off the resonance")
        void level() {
            assertThat(Damping.levelReduction(0.005, 0.05)).isCloseTo(20, within(1e-9));
        }

        @Test
        @DisplayName("a crowned bay gains far less than a flat one")
        void crowned() {
            Skin skin = Sheet.steel(0.0008).skin();
            Ringing flat = Ringing.of(skin, Bay.flat(0.6, 0.5)).value();
            Ringing crowned = Ringing.of(skin, Bay.crowned(0.6, 0.5, 0.004)).value();
            double flatLoss = Damping.modalLossFactor(0.005, flat.greatestBendingShare(), 0.6, 0.15);
            double crownedLoss = Damping.modalLossFactor(0.005, crowned.greatestBendingShare(), 0.6, 0.15);
            assertThat(crowned.greatestBendingShare()).isLessThan(0.25);
            assertThat(Damping.levelReduction(flatLoss, crownedLoss)).isLessThan(-9);
        }
    }
}
