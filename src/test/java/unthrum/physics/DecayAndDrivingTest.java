package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("How a panel dies away, and what drives it")
class DecayAndDrivingTest {

    @Nested
    @DisplayName("decay")
    class Dying {

        /** 2.2/(f T): Craik eq. 1.19, EN 15657 formula 13, ISO 10848-1:2017. */
        @ParameterizedTest
        @CsvSource({"250,0.5,0.0176", "500,0.2,0.022", "100,1,0.022"})
        @DisplayName("loss factor from the time to fall by 60 dB")
        void lossFactor(double frequency, double time, double loss) {
            assertThat(Decay.lossFactor(frequency, time)).isCloseTo(loss, within(1e-9));
        }
    }

    @Nested
    @DisplayName("driving")
    class Driving {

        /** A four-stroke cylinder fires every second turn: plain counting. */
        @ParameterizedTest
        @CsvSource({"3000,4,100", "800,4,26.6667", "2000,6,100", "1500,3,37.5"})
        @DisplayName("engines fire half as often as their cylinders turn")
        void firing(double rpm, int cylinders, double frequency) {
            assertThat(Excitation.firingFrequency(rpm, cylinders)).isCloseTo(frequency, within(1e-3));
        }

        @Test
        @DisplayName("a range counts by how much of it lies in the band")
        void share() {
            assertThat(new Band(30, 70).shareInside(Band.ROAD_DRUMMING)).isEqualTo(0.5);
            assertThat(new Band(60, 70).shareInside(Band.ROAD_DRUMMING)).isEqualTo(1);
            assertThat(new Band(10, 20).shareInside(Band.ROAD_DRUMMING)).isZero();
            assertThat(new Band(80, 80).shareInside(Band.ROAD_DRUMMING)).isEqualTo(1);
        }

        /** Modal density of a plate, (area/2)√(m''/D) per hertz: Lyon and DeJong, from memory; edges take some off. */
        @Test
        @DisplayName("the modes of a large plate are as many as its modal density says")
        void modalDensity() {
            Skin skin = Sheet.steel(0.0008).skin();
            Bay bay = Bay.flat(1.4, 1.1);
            double density = bay.area() / 2 * Math.sqrt(skin.surfaceDensity() / skin.flexuralRigidity());
            assertThat(Excitation.expectedModes(skin, bay, new Band(500, 2500)))
                    .isCloseTo(density * 2000, withinPercentage(5));
        }

        @Test
        @DisplayName("road noise drives a large flat panel more than a small or a crowned one")
        void ranking() {
            Skin skin = Sheet.steel(0.0008).skin();
            double large = Excitation.drive(skin, Bay.flat(1.1, 0.9), Band.ROAD_DRUMMING);
            double small = Excitation.drive(skin, Bay.flat(0.2, 0.15), Band.ROAD_DRUMMING);
            double crowned = Excitation.drive(skin, Bay.crowned(1.1, 0.9, 0.03), Band.ROAD_DRUMMING);
            assertThat(large).isGreaterThan(10 * small);
            assertThat(crowned).isLessThan(large);
        }
    }
}
