package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.reading.Problems;

@DisplayName("Curves that differ both ways, and beads, in a survey")
class CurvesAndBeadsTest {

    private static String problems(String key) {
        Problems thrown = catchThrowableOfType(Problems.class, () -> SmallJob.floor("size: [800 mm, 600 mm]", key));
        return thrown == null ? "no problem" : thrown.getMessage();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "shape: {curve: crowned, rise: 6 mm}",
        "shape: {curve: crowned, rise along: 6 mm, rise across: 10 mm}",
        "shape: {curve: rolled, rise: 12 mm, far rise: 4 mm}",
        "shape: {curve: rolled, rise: 4 mm, far rise: 12 mm}",
        "ribs: [{kind: bead, runs: along, at: 300 mm, height: 5 mm}]",
        "ribs: [{kind: bead, runs: along, at: 300 mm, section: rounded, stops short: 0 mm}]",
        "ribs: [{kind: bead, runs: across, at: 300 mm, section: flat top, stops short: 60 mm}]"})
    @DisplayName("that go together are read")
    void fine(String key) {
        assertThat(problems(key)).isEqualTo("no problem");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "shape: {curve: crowned, rise along: 6 mm}|a rise one way only",
        "shape: {curve: rolled, rise along: 6 mm, rise across: 6 mm}|rises along and across on a panel that is not crowned",
        "shape: {curve: crowned, rise: 6 mm, rise along: 6 mm, rise across: 9 mm}|rises along and across beside a rise",
        "shape: {curve: crowned, rise along: 6 mm, rise across: 301 mm}|a rise of 301 mm",
        "shape: {curve: crowned, rise: 6 mm, far rise: 2 mm}|a far rise without a rise of a rolled panel",
        "shape: {curve: rolled, far rise: 2 mm}|a far rise without a rise of a rolled panel",
        "shape: {curve: rolled, rise: 9 mm, far rise: 301 mm}|a rise of 301 mm",
        "ribs: [{kind: top hat, runs: along, at: 300 mm, section: rounded}]|the section or the ends of a top hat",
        "ribs: [{kind: bead, runs: along, at: 300 mm, stops short: 400 mm}]|a bead that ends 400 mm from both edges"})
    @DisplayName("that do not go together are told")
    void faults(String key, String found) {
        assertThat(problems(key)).contains("van.yaml:8:").contains(found);
    }
}
