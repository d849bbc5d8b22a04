package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.facts.Bay;
import unthrum.knowledge.Assumption;
import unthrum.knowledge.Knowledge;
import unthrum.reading.Words;
import unthrum.reading.YamlReader;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

@DisplayName("What nobody stated")
class AssumptionsTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();

    /** A panel of which nothing is stated, and one whose parts are named and nothing more. */
    private static Survey open(String zone, String engine) {
        String text = """
                survey: left open
                vehicle: {body: van, drive: diesel, use: daily%2$s}
                aims: [engine noise]
                panels:
                  - {panel: blank, zone: %1$s, size: [500 mm, 400 mm]}
                  - {panel: named, zone: %1$s, size: [500 mm, 400 mm], shape: {curve: crowned}, reach: part,
                     ribs: [{kind: bead, runs: across, at: 200 mm}], openings: [{kind: grommet}],
                     fixings: [{kind: bracket}], lid: {holder: struts}, heat: {from: sun}}
                """.formatted(zone, engine);
        return YamlReader.read(zone, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Survey.class);
    }

    @Test
    @DisplayName("is assumed in every zone, with no assumption that is never taken")
    void allTaken() {
        Set<String> taken = new TreeSet<>();
        for (Zone zone : Zone.values()) {
            for (PanelFacts facts : new Derivation(KNOWLEDGE).of(open(Words.of(zone), ""))) {
                taken.addAll(facts.assumptions().keySet());
            }
        }
        // these two only set the band of the engine's note, which is no panel's own fact
        taken.addAll(Set.of("cylinders", "engine speed"));
        assertThat(taken).containsExactlyInAnyOrderElementsOf(
                KNOWLEDGE.assumptions().stream().map(Assumption::fact).distinct().toList());
    }

    @Test
    @DisplayName("of the engine is taken as its assumptions say, and it matters what is taken")
    void engineNote() {
        assertThat(value("cylinders")).isEqualTo("4");
        assertThat(value("engine speed")).isEqualTo("2500 rpm");
        assertThat(drive("")).isEqualTo(drive(", cylinders: 4, engine speed: 2500 rpm"));
        assertThat(drive("")).isNotEqualTo(drive(", cylinders: 4, engine speed: 5000 rpm"));
        assertThat(drive("")).isNotEqualTo(drive(", cylinders: 8, engine speed: 2500 rpm"));
    }

    private static String value(String fact) {
        return KNOWLEDGE.assumption(fact, Zone.FLOOR).orElseThrow().value();
    }

    private static double drive(String engine) {
        return new Derivation(KNOWLEDGE).of(open("floor", engine)).get(1).the(Bay.class).drive();
    }
}
