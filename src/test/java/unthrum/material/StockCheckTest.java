package unthrum.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.Scenarios;
import unthrum.reading.Problems;
import unthrum.survey.SurveyReader;

@DisplayName("The stock on the shelf")
class StockCheckTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            material: butyl-2, sheets: 3             | fine
            material: vinyl-barrier-2, length: 3 m   | fine
            'material: vinyl-barrier-2, size: [400 mm, 200 mm], sheets: 2' | fine
            material: grommet-25, sheets: 12         | fine
            material: butyl2, sheets: 3              | no material 'butyl2'; expected a name from the catalogue; did you mean 'butyl-2'?
            material: vinyl-barrier-2, sheets: 2     | 2 sheets of 'vinyl-barrier-2', which comes on a roll; expected its length
            material: butyl-2, length: 2 m           | a length of 'butyl-2', which comes on no roll; expected a number of sheets
            """)
    @DisplayName("is known and counted as it is sold, or the place of the mistake is told")
    void stock(String entry, String says, @TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("van.yaml"), """
                survey: A van
                vehicle: {body: van, drive: petrol, use: daily}
                aims: [road drumming]
                stock: [{%s}]
                panels: [{panel: floor, zone: floor, size: [1 m, 1 m]}]
                """.formatted(entry));
        Problems problems = catchThrowableOfType(Problems.class,
                () -> SurveyReader.read(file, new StockCheck(() -> Scenarios.CATALOGUE)));
        assertThat(problems == null ? "fine" : problems.getMessage()).contains(says);
        if (problems != null) {
            assertThat(problems.getMessage()).contains("van.yaml:4:");
        }
    }
}
