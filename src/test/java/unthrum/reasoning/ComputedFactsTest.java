package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.facts.Bay;
import unthrum.facts.Decoupled;
import unthrum.facts.Dew;
import unthrum.facts.Fact;
import unthrum.facts.Leak;
import unthrum.facts.Limit;
import unthrum.facts.Sun;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Coverage;
import unthrum.physics.Sheet;
import unthrum.physics.Support;
import unthrum.reading.YamlReader;
import unthrum.derive.Derivation;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.survey.Survey;

/**
 * Computed numbers, not surveyed ones, decide these rules; each speaks on one side of its number and not on the other.
 */
@DisplayName("What is computed changes the plan")
class ComputedFactsTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final RuleEngine ENGINE = new RuleEngine(KNOWLEDGE);
    private static final List<Examples.Trial> TRIALS = Examples.all();
    private static final Set<Class<? extends Fact>> COMPUTED = Set.of(Decoupled.class, Dew.class, Leak.class, Sun.class);
    private static final Set<String> COMPUTED_OF_BAY = Set.of("lowest", "highest", "bendingShare", "gain", "drive");

    @ParameterizedTest(name = "{0}: {1} compares the {2}''s {3}")
    @CsvSource({
        "ringing,   damping/exhaust-drone,        Bay,       lowest",
        "curvature, diagnosis/little-bending,     Bay,       bendingShare",
        "slackness, diagnosis/likely-to-ring,     Bay,       highest",
        "tap,       diagnosis/rings-though-stiff, Bay,       lowest",
        "ladder,    decoupling/drone-below-resonance, Decoupled, resonance",
        "leak,      sealing/capped-wall,          Leak,      openShare",
        "heat,      heat/sun-on-dark-metal,       Sun,       metal",
        "dew,       insulation/condensation,      Dew,       below"
    })
    @DisplayName("rules that compare a computed number")
    void compared(String subject, String rule, String fact, String component) {
        Predicate<Reason> compares = r -> r.compared().stream().anyMatch(c ->
                c.fact().getClass().getSimpleName().equals(fact) && c.component().equals(component));
        assertThat(reasons(rule, true)).as(subject).isNotEmpty().anyMatch(compares);
        assertThat(reasons(rule, false)).as(subject).isEmpty();
    }

    @ParameterizedTest(name = "{0} by {1} mm")
    @CsvSource({"900, 700", "1200, 400", "1500, 300"})
    @DisplayName("the share of a bay that is covered is the knee of its own curve")
    void coverage(int length, int width) {
        double knee = Coverage.knee(Coverage.of(Sheet.steel(0.0008).skin(),
                unthrum.physics.Bay.flat(length / 1000.0, width / 1000.0), Support.HINGED_SLIDING).value()::share,
                KNOWLEDGE.number("damping/knee"));
        assertThat(coverLimits(length, width)).isNotEmpty().containsOnly(knee);
    }

    @Test
    @DisplayName("bays of other proportions are covered by other shares")
    void noHabit() {
        assertThat(coverLimits(900, 700)).doesNotContainAnyElementsOf(coverLimits(1500, 300));
    }

    private static List<Double> coverLimits(int length, int width) {
        String text = """
                survey: bay
                vehicle: {body: van, drive: diesel, use: daily}
                aims: [road drumming]
                panels:
                  - {panel: p, zone: side, size: [%d mm, %d mm], skin: {metal: steel, gauge: 0.8 mm},
                     shape: {curve: flat}, ribs: none, tap: rings}
                """.formatted(length, width);
        Survey survey = YamlReader.read("bay", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                Survey.class);
        return judgements(survey).stream().filter(j -> j.reasons().stream()
                        .anyMatch(r -> r.rule().id().equals("damping/middle-first")))
                .map(j -> ((Limit) j.conclusion()).value()).toList();
    }

    @Test
    @DisplayName("at least six rules in all compare one")
    void count() {
        Set<String> rules = new TreeSet<>();
        TRIALS.stream().filter(Examples.Trial::speaks).forEach(t -> judgements(t.survey()).stream()
                .flatMap(j -> j.reasons().stream()).filter(ComputedFactsTest::usesComputed)
                .forEach(r -> rules.add(r.rule().id())));
        assertThat(rules).hasSizeGreaterThanOrEqualTo(6);
    }

    private static boolean usesComputed(Reason reason) {
        return reason.compared().stream().anyMatch(c -> COMPUTED.contains(c.fact().getClass())
                && !c.component().equals("panel")
                || c.fact() instanceof Bay && COMPUTED_OF_BAY.contains(c.component()));
    }

    private static List<Reason> reasons(String rule, boolean speaks) {
        return TRIALS.stream().filter(t -> t.rule().equals(rule) && t.speaks() == speaks)
                .flatMap(t -> judgements(t.survey()).stream()).flatMap(j -> j.reasons().stream())
                .filter(r -> r.rule().id().equals(rule)).toList();
    }

    private static List<Judgement> judgements(Survey survey) {
        try (RuleSession session = ENGINE.open()) {
            new Derivation(KNOWLEDGE).of(survey).forEach(b -> session.state(b.panel(), b.facts()));
            return session.judgements(c -> true);
        }
    }
}
