package unthrum.built;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reading.Problems;

@DisplayName("An as-built file")
class JobReaderTest {
    private static final JobReader READER = new JobReader(Knowledge.load(), Catalogue.load(), LocalDate.of(2026, 3, 12));
    private static final String SURVEY = """
            survey: Small job
            vehicle: {body: van, drive: petrol, use: daily}
            aims: [road drumming]
            panels:
              - panel: side
                zone: side
                size: [800 mm, 600 mm]
                ribs: [{kind: bead, runs: across, at: 400 mm, width: 20 mm}]
                openings: [{kind: cable hole, size: 20 mm}]
            """;
    /** The panel begins in line 5. */
    private static final String BUILT = """
            of: van.yaml
            finished: 2026-03-12
            who: A. Fitter
            panels:
              - panel: side
                layers: [{material: butyl-2, at: bay 1, coverage: 40 %, over: none}]
                done: [{work: wash, when: 2026-03-11}]
                closed: cable hole 1
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void survey() throws IOException {
        Files.writeString(folder.resolve("van.yaml"), SURVEY);
    }

    private String problems(String built) throws IOException {
        Path file = Files.writeString(folder.resolve("van-built.yaml"), built);
        Problems thrown = catchThrowableOfType(Problems.class, () -> READER.read(file));
        return thrown == null ? "no problem" : thrown.getMessage().replace(folder + "/", "");
    }

    @Test
    @DisplayName("is read whole, with the survey that it names")
    void whole() throws IOException {
        assertThat(problems(BUILT)).isEqualTo("no problem");
        Job job = READER.read(folder.resolve("van-built.yaml"));
        assertThat(job.survey().survey()).isEqualTo("Small job");
        assertThat(job.built().panel("side").orElseThrow().layers().orElseThrow()).hasSize(1);
    }

    @ParameterizedTest(name = "{0} becomes {1}")
    @DisplayName("cannot hold what cannot be; the place of each mistake is told")
    @CsvSource(delimiter = '|', textBlock = """
            panel: side     | panel: sied    | 5:12: no panel 'sied' in the survey; expected the name of a panel in it; did you mean 'side'?
            40 %            | 140 %          | 6:55: '140 %' is too large; expected a share in %, from 0 % to 100 %
            40 %            | 37,5 %         | 6:55: '37,5 %' has a comma; expected a share in %, from 0 % to 100 %; write '37.5 %'
            at: bay 1       | at: "bay 1, bay 2" | 6:38: no 'bay 1, bay 2' on the panel; expected a bay of the panel: bay 1, bay 2; write '[bay 1, bay 2]'
            at: bay 1       | at: bay          | 6:38: no 'bay' on the panel; expected a bay of the panel: bay 1, bay 2; did you mean 'bay 1' or 'bay 2'?
            butyl-2         | butyl-22       | 6:25: no material 'butyl-22' in the catalogue; expected the name of a material in it; did you mean 'butyl-2'?
            bay 1           | bay 7          | 6:38: no 'bay 7' on the panel; expected a bay of the panel: bay 1, bay 2; did you mean 'bay 1'?
            over: none      | over: drain 1  | 6:67: no 'drain 1' on the panel; expected a rib, fixing, hole or cover of the panel: bead at 400 mm, cable hole 1
            2026-03-11      | 2026-03-13     | 7:31: the day 2026-03-13, which is to come; expected no day after 2026-03-12
            cable hole 1    | cable hole 2   | 8:13: no 'cable hole 2' on the panel; expected a hole of the panel: cable hole 1; did you mean 'cable hole 1'?
            finished: 2026-03-12 | finished: 2026-03-10 | 7:31: work on 2026-03-11, after the job was finished on 2026-03-10; expected no day after that; move 'finished' on, or correct the day
            finished: 2026-03-12 | finished: 2027-01-01 | 2:11: the day 2027-01-01, which is to come; expected no day after 2026-03-12
            of: van.yaml    | of: car.yaml   | 1:5: no file 'car.yaml' beside this one; expected the survey's file
            who: A. Fitter  | note: none     | 7:12: 'wash' done by nobody; expected who did it, here, with the panel or with the job; add 'who'
            work: wash      | work: polish   | 7:19: 'polish'; expected one of""")
    void refused(String before, String after, String problem) throws IOException {
        assertThat(BUILT).contains(before);
        assertThat(problems(BUILT.replace(before, after))).startsWith("van-built.yaml:" + problem);
    }

    @Test
    @DisplayName("cannot name a panel twice, or an overrule's rule that there is not; the survey's own mistakes come first")
    void others() throws IOException {
        assertThat(problems(BUILT + "  - panel: side\n")).isEqualTo("van-built.yaml:9:12: the panel 'side' again"
                + " (first in line 5); expected each panel once");
        Files.writeString(folder.resolve("van.yaml"), SURVEY
                + "    overrules: [{rule: barrier/far, who: A, when: 2026-01-01}]\n");
        assertThat(problems(BUILT)).startsWith("van.yaml:10:24: no rule 'barrier/far'; expected the id of a rule");
        Files.writeString(folder.resolve("van.yaml"), SURVEY.replace("600 mm", "600"));
        assertThat(problems(BUILT)).startsWith("van.yaml:7:20: '600' without a unit");
    }
}
