package unthrum.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.knowledge.AimEntry.Meter;
import unthrum.knowledge.Knowledge;
import unthrum.physics.ThirdOctave;
import unthrum.survey.Aim;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

@DisplayName("What the client hears of each aim")
class HeardSoundTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();

    private static HeardSound heard(Aim aim, String speed) {
        String text = "survey: s\nvehicle: {body: van, drive: diesel, use: [daily], cylinders: 4, engine speed: " + speed
                + " rpm}\naims: [road drumming]\npanels:\n  - {panel: a, zone: floor, size: [1 m, 1 m]}\n";
        Survey survey = SurveyReader.read("s", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        return HeardSound.of(aim, survey, KNOWLEDGE).orElseThrow();
    }

    private static double level(double[] spectrum, ThirdOctave band) {
        return 10 * Math.log10(spectrum[ThirdOctave.HEARD.indexOf(band)]);
    }

    @Test
    @DisplayName("each aim has its measure, and only rattles have none")
    void measures() {
        assertThat(Aim.values()).filteredOn(a -> KNOWLEDGE.aim(a).measuredBy() == Meter.TRADE)
                .containsExactly(Aim.RATTLES);
        assertThat(Aim.values()).allSatisfy(a -> assertThat(KNOWLEDGE.aim(a).heard().isPresent())
                .isEqualTo(KNOWLEDGE.aim(a).measuredBy() == Meter.SOUND));
        assertThat(Aim.values()).allSatisfy(a -> assertThat(KNOWLEDGE.sourceTitle(KNOWLEDGE.aim(a).source())).isNotBlank());
    }

    /** Directive (EU) 2015/996, table F-1, category 1, propulsion; A-weighting of IEC 61672-1, table 3. */
    @ParameterizedTest(name = "{0}: {1} dB, {2} dB A-weighting")
    @CsvSource({"HZ_125, 89.2, -16.1", "HZ_250, 88.0, -8.6", "HZ_500, 85.9, -3.2", "HZ_1000, 84.2, 0.0",
        "HZ_2000, 86.9, 1.2", "HZ_4000, 83.3, 1.0"})
    @DisplayName("airborne engine noise is the propulsion of the directive, A-weighted")
    void engine(ThirdOctave band, double level, double weighting) {
        double[] airborne = heard(Aim.ENGINE_NOISE, "3000").airborne();
        assertThat(level(airborne, band) - level(airborne, ThirdOctave.HZ_1000))
                .isCloseTo(level + weighting - 84.2, offset(0.15));
    }

    /** Directive (EU) 2015/996, table F-1, category 1, rolling. */
    @ParameterizedTest(name = "{0}: {1} dB")
    @CsvSource({"HZ_63, 79.7", "HZ_125, 85.7", "HZ_250, 84.5"})
    @DisplayName("airborne road noise is the rolling of the directive, unweighted where people mean drumming")
    void road(ThirdOctave band, double level) {
        double[] airborne = heard(Aim.ROAD_DRUMMING, "3000").airborne();
        assertThat(level(airborne, band) - level(airborne, ThirdOctave.HZ_125)).isCloseTo(level - 85.7, offset(1e-9));
        assertThat(airborne[ThirdOctave.HEARD.indexOf(ThirdOctave.HZ_1000)]).isZero();
    }

    /** A four-cylinder four-stroke fires twice a turn: 100 Hz at 3000 rpm, 50 Hz at 1500 rpm (kinematics). */
    @ParameterizedTest(name = "{0} rpm: {1} to {2}")
    @CsvSource({"3000, HZ_50, HZ_200", "1500, HZ_25, HZ_100"})
    @DisplayName("a drone lies between half and twice the firing frequency")
    void drone(String speed, ThirdOctave lowest, ThirdOctave highest) {
        double[] shaking = heard(Aim.EXHAUST_DRONE, speed).shaking();
        List<ThirdOctave> heard = ThirdOctave.HEARD.stream().filter(b -> shaking[ThirdOctave.HEARD.indexOf(b)] > 0).toList();
        assertThat(heard.get(0)).isEqualTo(lowest);
        assertThat(heard.get(heard.size() - 1)).isEqualTo(highest);
    }

    @Test
    @DisplayName("rain shakes the roof alone and comes through the air on no panel")
    void rain() {
        assertThat(Arrays.stream(heard(Aim.RAIN_NOISE, "3000").airborne()).sum()).isZero();
        assertThat(KNOWLEDGE.aim(Aim.RAIN_NOISE).heard().orElseThrow().shaken().si()).isEqualTo(1);
    }
}
