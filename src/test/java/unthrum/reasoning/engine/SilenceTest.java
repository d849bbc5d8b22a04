package unthrum.reasoning.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.facts.Bay;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.reading.YamlReader;
import unthrum.reasoning.Drafts;
import unthrum.reasoning.Drafts.Draft;
import unthrum.reasoning.Examples;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Silence.Looked;
import unthrum.reasoning.engine.Silence.Outcome;
import unthrum.survey.Survey;
import unthrum.survey.Tap;

@DisplayName("A rule that stayed silent says why")
class SilenceTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);

    private static RuleSession session(Survey survey) {
        RuleSession session = ENGINE.open();
        for (PanelFacts bundle : new Derivation(KNOWLEDGE).of(survey)) {
            session.state(bundle.panel(), bundle.facts());
        }
        return session;
    }

    /** The nearest miss of a rule on one panel of a van whose owner minds the road. */
    private static Silence nearest(String rule, String panel) {
        return all(rule, panel).get(0);
    }

    private static List<Silence> all(String rule, String panel) {
        String text = """
                survey: silence
                vehicle: {body: van, drive: diesel, use: daily}
                aims: [road drumming]
                panels: [{panel: here, size: [700 mm, 500 mm], skin: {metal: steel, gauge: 0.8 mm}, %s}]
                """.formatted(panel);
        Survey survey = YamlReader.read("silence", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                Survey.class);
        try (RuleSession session = session(survey)) {
            return session.silences(name(rule), Place.of("here"));
        }
    }

    private static String name(String id) {
        return KNOWLEDGE.cards().stream().filter(c -> c.id().equals(id)).map(RuleCard::name).findFirst().orElseThrow();
    }

    private static Looked looked(Silence silence, String text) {
        return silence.conditions().stream().filter(l -> l.text().contains(text)).findFirst().orElseThrow();
    }

    @Nested
    @DisplayName("by the shape of its conditions")
    class Shapes {
        @Test
        @DisplayName("one fact by itself: the bay is not dead, it rings")
        void alpha() {
            Silence silence = nearest("diagnosis/dead-bay", "zone: side, tap: rings");
            assertThat(silence.about()).containsInstanceOf(Bay.class);
            assertThat(silence.failures()).isEqualTo(1);
            Looked tap = looked(silence, "tap ==");
            assertThat(tap.outcome()).isEqualTo(Outcome.FAILED);
            assertThat(tap.values()).singleElement().satisfies(v -> assertThat(v.value()).isEqualTo(Tap.RINGS));
            assertThat(tap.assumed()).isFalse();
        }

        @Test
        @DisplayName("a fact against a threshold: the span of 500 mm misses the short spans of 250 mm by 250 mm")
        void threshold() {
            Silence silence = nearest("diagnosis/short-span", "zone: side, tap: dull");
            assertThat(silence.failures()).isEqualTo(1);
            Looked span = looked(silence, "span <=");
            assertThat(span.outcome()).isEqualTo(Outcome.FAILED);
            assertThat(span.values()).hasSize(2);
            assertThat(span.margin().orElseThrow()).isCloseTo(0.25, within(1e-9));
            assertThat(looked(silence, "tap in").outcome()).isEqualTo(Outcome.HELD);
        }

        @Test
        @DisplayName("two facts joined by the panel: the bay rings, but nobody has stated that an ear is near")
        void factJoin() {
            Silence silence = nearest("damping/ring-near-ear", "zone: side, tap: rings");
            Looked ear = looked(silence, "nearEar");
            assertThat(ear.outcome()).isEqualTo(Outcome.FAILED);
            assertThat(ear.assumed()).isTrue();
            assertThat(looked(silence, "tap ==").outcome()).isEqualTo(Outcome.HELD);
            assertThat(looked(nearest("damping/ring-near-ear", "zone: side, tap: rings, near ear: false"), "nearEar")
                    .assumed()).isFalse();
        }

        @Test
        @DisplayName("a conclusion of another rule: no barrier is wanted, so none can want its foam")
        void conclusionJoin() {
            Silence silence = nearest("decoupling/under-barrier", "zone: side, tap: dead, clearance: 15 mm");
            assertThat(silence.conditions()).filteredOn(l -> l.outcome() != Outcome.HELD).singleElement()
                    .satisfies(l -> {
                        assertThat(l.kind()).isEqualTo("Want");
                        assertThat(l.outcome()).isEqualTo(Outcome.NOTHING_TO_LOOK_AT);
                    });
        }

        @Test
        @DisplayName("a 'not': a service opening is there, and it is the one that is shown")
        void not() {
            Silence silence = nearest("barrier/far-from-source", "zone: side, tap: dead, near noise: none, "
                    + "openings: [{kind: drain}, {kind: service opening}]");
            assertThat(silence.failures()).isEqualTo(1);
            Looked opening = silence.conditions().stream().filter(l -> l.kind().equals("Opening")).findFirst()
                    .orElseThrow();
            assertThat(opening.outcome()).isEqualTo(Outcome.FAILED);
            assertThat(opening.found().map(o -> ((Opening) o).number())).contains(2);
        }

        @Test
        @DisplayName("an 'exists': something moves, but nothing is wanted there")
        void exists() {
            Silence silence = nearest("proof/check-travel", "zone: floor, tap: dead, moving: [pedals]");
            assertThat(silence.conditions()).filteredOn(l -> l.outcome() != Outcome.HELD)
                    .extracting(Looked::kind).containsExactly("Want");
        }

        @Test
        @DisplayName("an assumption: the clearance was measured, so nothing need be asked")
        void assumedContains() {
            Silence silence = nearest("fit/clearance-unknown", "zone: side, tap: rings, clearance: 15 mm");
            assertThat(silence.failures()).isEqualTo(1);
            assertThat(looked(silence, "assumed contains").outcome()).isEqualTo(Outcome.FAILED);
        }

        @Test
        @DisplayName("the vehicle's own facts: rain is no aim of this client")
        void vehicle() {
            Silence silence = nearest("damping/rain-noise", "zone: roof, tap: rings");
            assertThat(silence.failures()).isEqualTo(1);
            assertThat(looked(silence, "aim ==").outcome()).isEqualTo(Outcome.FAILED);
        }

        @Test
        @DisplayName("one trace for each bay, the nearest miss first")
        void eachBay() {
            List<Silence> traces = all("damping/dull-near-ear", "zone: side, near ear: true, tap: [rings, rings, dull], "
                    + "ribs: [{kind: bead, runs: across, at: 100 mm}, {kind: bead, runs: across, at: 500 mm}]");
            assertThat(traces).hasSize(3);
            assertThat(traces).extracting(Silence::failures).isSorted();
            assertThat(((Bay) traces.get(0).about().orElseThrow()).number()).isNotEqualTo(1);
        }
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    @Label("and a rule spoke exactly when one of its traces has no failure, on any panel")
    void agreesOnAnyPanel(@ForAll("heads") String head, @ForAll("panels") Draft panel) {
        assertThat(disagreements(Drafts.survey(head, List.of(panel), 0), "p0")).isEmpty();
    }

    @Provide
    Arbitrary<String> heads() {
        return Drafts.heads();
    }

    @Provide
    Arbitrary<Draft> panels() {
        return Drafts.panels();
    }

    @Test
    @DisplayName("and a rule spoke exactly when one of its traces has no failure, on every example of every rule")
    void agreesWithTheEngine() {
        assertThat(Examples.all().stream().flatMap(t -> disagreements(t.survey(), "panel").stream()
                .map(d -> d + " on " + t))).isEmpty();
    }

    private static List<String> disagreements(Survey survey, String panel) {
        try (RuleSession session = session(survey)) {
            Set<String> spoke = session.judgements(c -> true).stream().flatMap(j -> j.reasons().stream())
                    .map(r -> r.rule().id()).collect(Collectors.toSet());
            List<String> disagreements = new ArrayList<>();
            for (RuleCard card : KNOWLEDGE.cards()) {
                boolean traced = session.silences(card.name(), Place.of(panel)).stream().anyMatch(s -> s.failures() == 0);
                if (traced != spoke.contains(card.id())) {
                    disagreements.add(card.id() + (traced ? " is traced but silent" : " spoke untraced"));
                }
            }
            return disagreements;
        }
    }
}
