package unthrum.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import unthrum.reading.Problem;
import unthrum.reading.Problems;
import unthrum.reading.YamlReader;

@DisplayName("A shop's own catalogue")
class CatalogueReaderTest {
    private static final String FOAM = """
            materials:
              - material: our-foam-10
                is: closed-cell foam from the back room
                layer: insulation
                thickness: 0.4 in
                surface density: 0.6 kg/m2
                service from: -40 degC
                service to: 95 degC
                bonds from: 5 degC
                cell: closed
                bonding: self-adhesive
                removable: false
                form: roll
                size: [1 m, 8 m]
                in pack: 1
                price: 80 EUR
                published: {}
            """;

    @TempDir
    private Path folder;

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("own.yaml"), text);
    }

    private Problem onlyProblem(String text) throws IOException {
        Path own = file(text);
        Problems problems = catchThrowableOfType(Problems.class, () -> Catalogue.of(own));
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    @Test
    @DisplayName("is read with units as they are printed; a decimal comma and another word are told what to write")
    void asPeopleWrite() throws IOException {
        Material foam = Catalogue.of(file(FOAM.replace("95 degC", "95 °C").replace("kg/m2", "kg/m²"))).all().get(0);
        assertThat(foam.serviceTo().si()).isEqualTo(95);
        assertThat(foam.surfaceDensity().si()).isEqualTo(0.6);
        assertThat(onlyProblem(FOAM.replace("[1 m, 8 m]", "[1,2 m, 8 m]")).remedy()).isEqualTo("write '1.2 m'");
        assertThat(onlyProblem(FOAM.replace("[1 m, 8 m]", "1,2 x 8 m")).remedy()).isEqualTo("write '[1.2 m, 8 m]'");
        assertThat(onlyProblem(FOAM.replace("0.4 in", "0,4 in")).remedy()).isEqualTo("write '0.4 in'");
        assertThat(onlyProblem(FOAM.replace("layer: insulation", "layer: glass wool")).remedy())
                .isEqualTo("write 'insulation' or 'absorber'");
    }

    @Test
    @DisplayName("is read from its file, in inches where it says so")
    void reads() throws IOException {
        Material foam = Catalogue.of(file(FOAM)).find("our-foam-10").orElseThrow();
        // 1 in = 25.4 mm exactly: NIST SP 811, appendix B
        assertThat(foam.thickness().si()).isEqualTo(0.01016);
        assertThat(foam.burnRate()).isEmpty();
    }

    @Test
    @DisplayName("names each material once")
    void duplicate() throws IOException {
        String twice = FOAM + FOAM.substring(FOAM.indexOf('\n') + 1).replace("our-foam-10", "Our-Foam-10");
        Problem problem = onlyProblem(twice);
        assertThat(problem.found()).isEqualTo("the material 'Our-Foam-10' again (first in line 2)");
        assertThat(problem.line()).isEqualTo(18);
    }

    @Test
    @DisplayName("has no service that ends colder than it begins")
    void serviceBackwards() throws IOException {
        assertThat(onlyProblem(FOAM.replace("service to: 95", "service to: -50")).toString())
                .contains("own.yaml:8:", "service to -50 °C; expected more than the -40 °C that service begins at");
    }

    @Test
    @DisplayName("says how cold a surface may be for whatever sticks")
    void bondsFrom() throws IOException {
        assertThat(onlyProblem(FOAM.replace("    bonds from: 5 degC\n", "")).found())
                .isEqualTo("no 'bonds from' for a material that is self-adhesive");
    }

    @Test
    @DisplayName("keeps damping data for damping sheets")
    void dampingData() throws IOException {
        assertThat(onlyProblem(FOAM.replace("layer: insulation", "layer: damping")).found())
                .isEqualTo("no damping data for a material of the layer 'damping'");
    }

    @Test
    @DisplayName("gives damping data in order of temperature, under a facing thinner than the sheet")
    void dampingOrder() throws IOException {
        Path own = file(FOAM.replace("layer: insulation", "layer: damping").replace("    published: {}\n", """
                    damping:
                      facing: 2 mm
                      facing modulus: 70 GPa
                      at: 200 Hz
                      shift: {at: 20 degC, c1: 11, c2: 205, source: from-memory}
                      points:
                        - {temperature: 20 degC, shear modulus: 2 MPa, loss factor: 1}
                        - {temperature: 0 degC, shear modulus: 9 MPa, loss factor: 0.8}
                    published: {}
                """).replace("thickness: 0.4 in", "thickness: 2 mm"));
        Problems problems = catchThrowableOfType(Problems.class, () -> Catalogue.of(own));
        assertThat(problems.all()).extracting(Problem::found)
                .containsExactly("a facing of 2 mm", "the temperature 0 °C");
    }

    @Test
    @DisplayName("gives sources to properties that exist")
    void published() throws IOException {
        Problem problem = onlyProblem(FOAM.replace("published: {}", "published: {thicknes: en-1999-1-1}"));
        assertThat(problem.found()).isEqualTo("no property 'thicknes'");
        assertThat(problem.remedy()).isEqualTo("did you mean 'thickness'?");
    }

    @Test
    @DisplayName("holds goods of a real kind")
    void anyLayer() throws IOException {
        assertThat(onlyProblem(FOAM.replace("layer: insulation", "layer: any")).found()).isEqualTo("the layer 'any'");
    }

    @Test
    @DisplayName("proposes the nearest name for one that it lacks")
    void nearestName() throws IOException {
        record Wish(String material) {
        }

        Path wish = Files.writeString(folder.resolve("wish.yaml"), "material: butil-2\n");
        Problems problems = catchThrowableOfType(Problems.class, () -> YamlReader.read(wish, Wish.class,
                (value, places) -> Catalogue.load().find(value.material(), "material", places)));
        List<Problem> all = problems.all();
        assertThat(all).hasSize(1);
        assertThat(all.get(0).toString()).endsWith("wish.yaml:1:11: no material 'butil-2' in the catalogue; "
                + "expected the name of a material in it; did you mean 'butyl-2'?");
    }
}
