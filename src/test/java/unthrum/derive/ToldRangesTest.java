package unthrum.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.facts.Bay;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Sheet;
import unthrum.physics.TaperedRoll;
import unthrum.survey.SmallJob;

@DisplayName("The range that a bay is told to ring in")
class ToldRangesTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();

    private static PanelFacts facts(String size, String gauge, String keys) {
        return new Derivation(KNOWLEDGE).of(SmallJob.floor("size: [" + size + "]",
                "skin: {metal: steel, gauge: " + gauge + "}", keys)).get(1);
    }

    private static Bay first(String size, String gauge, String keys) {
        return facts(size, gauge, keys).all(Bay.class).findFirst().orElseThrow();
    }

    private static String beads(int width, int height, int... at) {
        StringBuilder ribs = new StringBuilder("ribs: [");
        for (int place : at) {
            ribs.append(ribs.length() > 7 ? ", " : "").append("{kind: bead, runs: across, at: ").append(place)
                    .append(" mm, width: ").append(width).append(" mm, height: ").append(height).append(" mm}");
        }
        return ribs + "]";
    }

    @Test
    @DisplayName("rises of 14, 16 and 18 mm, read 2 mm off at most, can all be right")
    void rises() {
        Bay low = first("1000 mm, 700 mm", "0.7 mm", "shape: {curve: crowned, rise: 14 mm}");
        Bay middle = first("1000 mm, 700 mm", "0.7 mm", "shape: {curve: crowned, rise: 16 mm}");
        Bay high = first("1000 mm, 700 mm", "0.7 mm", "shape: {curve: crowned, rise: 18 mm}");
        assertThat(middle.lowest()).isLessThan(low.highest());
        assertThat(high.lowest()).isLessThan(middle.highest());
        assertThat(middle.lowest()).isGreaterThan(low.lowest()).isLessThan(high.lowest());
    }

    /** Finite elements, first frequency by how the edges are held: issue 16 of this project, point 7. */
    @ParameterizedTest
    @CsvSource({"1200,900,0.7,30,3,5,7.5,11.8", "1000,800,0.8,40,5,2,13,18", "900,600,0.8,40,5,3,27,36"})
    @DisplayName("of a panel with beads holds what finite elements give for the whole")
    void beaded(int length, int width, double gauge, int foot, int height, int count, double least, double most) {
        int[] at = new int[count];
        for (int i = 0; i < count; i++) {
            at[i] = length * (i + 1) / (count + 1);
        }
        Bay bay = first(length + " mm, " + width + " mm", gauge + " mm", "shape: flat\n    "
                + beads(foot, height, at));
        assertThat(bay.lowest()).isLessThanOrEqualTo(least);
        assertThat(bay.highest()).isGreaterThanOrEqualTo(most);
    }

    @Test
    @DisplayName("goes with the height of the beads, and is wider where nobody measured it")
    void height() {
        String shape = "shape: flat\n    ";
        Bay low = first("1000 mm, 800 mm", "0.8 mm", shape + beads(30, 4, 330, 670));
        Bay tall = first("1000 mm, 800 mm", "0.8 mm", shape + beads(30, 10, 330, 670));
        Bay unknown = first("1000 mm, 800 mm", "0.8 mm", shape + beads(30, 10, 330, 670).replace(", height: 10 mm", ""));
        assertThat(tall.lowest()).isGreaterThan(low.lowest());
        assertThat(tall.highest()).isGreaterThan(low.highest());
        assertThat(unknown.lowest()).isLessThanOrEqualTo(low.lowest());
        assertThat(unknown.highest()).isGreaterThanOrEqualTo(tall.highest());
        Bay told = first("1000 mm, 800 mm", "0.8 mm", shape + beads(30, 10, 330, 670)
                .replace("10 mm}", "10 mm, section: rounded, stops short: 40 mm}"));
        assertThat(told.lowest()).isGreaterThanOrEqualTo(tall.lowest());
        assertThat(told.highest()).isLessThan(tall.highest());
    }

    @Test
    @DisplayName("of every bay between beads is no higher than that of the whole, and the whole is handed on")
    void whole() {
        PanelFacts facts = facts("1000 mm, 800 mm", "0.8 mm", "shape: flat\n    " + beads(30, 5, 330, 670));
        List<Bay> bays = facts.all(Bay.class).toList();
        assertThat(bays).hasSize(3);
        for (Bay bay : bays) {
            BayModes modes = facts.modes(bay.place()).orElseThrow();
            assertThat(modes.told().value().lower()).isEqualTo(bay.lowest());
            assertThat(bay.lowest()).isLessThanOrEqualTo(modes.whole().orElseThrow().told().value().lower());
            assertThat(bay.highest()).isLessThanOrEqualTo(modes.whole().orElseThrow().told().value().upper());
            assertThat(modes.ringing().value().frequency().lower()).isGreaterThan(bay.lowest());
        }
    }

    @Test
    @DisplayName("of bays beside a top hat knows of no whole across it")
    void walls() {
        PanelFacts facts = facts("1000 mm, 800 mm", "0.8 mm", """
                shape: flat
                    ribs:
                      - {kind: top hat, runs: across, at: 500 mm, width: 50 mm}
                      - {kind: bead, runs: across, at: 250 mm, width: 30 mm, height: 5 mm}""");
        List<Bay> bays = facts.all(Bay.class).toList();
        BayModes beaded = facts.modes(bays.get(0).place()).orElseThrow();
        assertThat(beaded.whole().orElseThrow().region().length()).isBetween(0.4749, 0.4751);
        assertThat(facts.modes(bays.get(2).place()).orElseThrow().whole()).isEmpty();
    }

    @Test
    @DisplayName("of beads on a curve or across each other holds both ways of stiffening")
    void together() {
        String bead = beads(30, 5, 500);
        Bay flat = first("1000 mm, 800 mm", "0.8 mm", "shape: flat\n    " + bead);
        Bay curved = first("1000 mm, 800 mm", "0.8 mm", "shape: {curve: crowned, rise: 8 mm}\n    " + bead);
        assertThat(curved.lowest()).isLessThanOrEqualTo(flat.lowest() * 1.001);
        assertThat(curved.highest()).isGreaterThan(flat.highest());
        Bay crossing = first("1000 mm, 800 mm", "0.8 mm", "shape: flat\n    " + bead.replace("]",
                ", {kind: bead, runs: along, at: 400 mm, width: 30 mm, height: 5 mm}]"));
        assertThat(crossing.lowest()).isPositive();
        assertThat(crossing.highest()).isGreaterThan(crossing.lowest());
    }

    @Test
    @DisplayName("of a crown told both ways lies between those of its two rises; that of a taper about the computed one")
    void bothWays() {
        Bay both = first("900 mm, 900 mm", "0.8 mm", "shape: {curve: crowned, rise along: 6 mm, rise across: 10 mm}");
        Bay lesser = first("900 mm, 900 mm", "0.8 mm", "shape: {curve: crowned, rise: 6 mm}");
        Bay greater = first("900 mm, 900 mm", "0.8 mm", "shape: {curve: crowned, rise: 10 mm}");
        assertThat(both.lowest()).isBetween(lesser.lowest(), greater.lowest());
        assertThat(both.highest()).isBetween(lesser.highest(), greater.highest());
        Bay equal = first("900 mm, 900 mm", "0.8 mm", "shape: {curve: crowned, rise along: 6 mm, rise across: 6 mm}");
        assertThat(equal.lowest()).isBetween(lesser.lowest() * 0.999, lesser.lowest() * 1.001);
        Bay taper = first("900 mm, 700 mm", "0.8 mm", "shape: {curve: rolled, rise: 12 mm, far rise: 4 mm}");
        Band computed = new TaperedRoll(0.9, 0.7, 0.012, 0.004).ringing(Sheet.steel(0.0008).skin()).value().told();
        assertThat(taper.lowest()).isLessThan(computed.lower()).isGreaterThan(0.6 * computed.lower());
        assertThat(taper.highest()).isGreaterThan(computed.upper()).isLessThan(1.5 * computed.upper());
    }
}
