package unthrum.reasoning;

import static org.assertj.core.api.Assertions.assertThat;

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
import unthrum.reasoning.derive.Derivation;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;

/** Computed numbers, not surveyed ones, decide these rules; each speaks on one side of its number and not on the other. */
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
        "ladder,    decoupling/gains-too-little,  Decoupled, gain",
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

    @Test
    @DisplayName("the share of a bay that is covered is the computed knee of its curve")
    void coverage() {
        List<Judgement> limits = TRIALS.stream().filter(t -> t.speaks() && t.rule().equals("damping/middle-first"))
                .flatMap(t -> judgements(t).stream()).filter(j -> j.conclusion() instanceof Limit l
                        && l.bound() == Limit.Bound.COVERAGE).toList();
        double habit = KNOWLEDGE.number("usual/cover");
        assertThat(limits).isNotEmpty().allSatisfy(j -> assertThat(((Limit) j.conclusion()).value())
                .isBetween(0.2, 0.6).isNotEqualTo(habit));
    }

    @Test
    @DisplayName("at least six rules in all compare one")
    void count() {
        Set<String> rules = new TreeSet<>();
        TRIALS.stream().filter(Examples.Trial::speaks).forEach(t -> judgements(t).stream()
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
                .flatMap(t -> judgements(t).stream()).flatMap(j -> j.reasons().stream())
                .filter(r -> r.rule().id().equals(rule)).toList();
    }

    private static List<Judgement> judgements(Examples.Trial trial) {
        try (RuleSession session = ENGINE.open()) {
            new Derivation(KNOWLEDGE).of(trial.survey()).forEach(b -> session.state(b.panel(), b.facts()));
            return session.judgements(c -> true);
        }
    }
}
