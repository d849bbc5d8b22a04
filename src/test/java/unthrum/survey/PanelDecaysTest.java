package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.reading.Problem;
import unthrum.reading.Problems;

@DisplayName("A measured decay in the survey")
class PanelDecaysTest {

    private static Survey read(String decay) {
        String yaml = """
                survey: one side
                vehicle: {body: van, drive: diesel, use: daily}
                aims: [road drumming]
                panels:
                  - panel: side
                    zone: side
                    size: [900 mm, 600 mm]
                    ribs: [{kind: top hat, runs: across, at: 450 mm, width: 40 mm}]
                    decay: %s
                """.formatted(decay);
        return SurveyReader.read("side", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    @DisplayName("is a time with its frequency, or a loss factor, for any of the bays")
    void good() {
        Survey survey = read("[{bay: 2, time: 0.4 s, at: 120 Hz}, {bay: 1, loss factor: 0.02}]");
        assertThat(survey.panels().get(0).decay().orElseThrow()).hasSize(2)
                .first().satisfies(d -> assertThat(d.time().orElseThrow().si()).isEqualTo(0.4));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "[{bay: 3, loss factor: 0.02}] | bay 3 of 2 bays",
        "[{bay: 1, loss factor: 0.02}, {bay: 1, loss factor: 0.03}] | bay 1 again",
        "[{bay: 1}] | neither a time nor a loss factor",
        "[{bay: 1, time: 1 s, at: 50 Hz, loss factor: 0.02}] | a time and a loss factor",
        "[{bay: 1, time: 1 s}] | a time without its frequency",
        "[{bay: 1, time: 0.02 s, at: 50 Hz}] | which makes a loss factor of 2.20000",
        "[{bay: 1, time: 60 s, at: 800 Hz}] | which makes a loss factor of 0.00005"})
    @DisplayName("is refused where it names no bay, says two things or cannot be")
    void bad(String decay, String found) {
        Problems problems = catchThrowableOfType(Problems.class, () -> read(decay));
        assertThat(problems.all()).singleElement().extracting(Problem::found).asString().contains(found);
    }
}
