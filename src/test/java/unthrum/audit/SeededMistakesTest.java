package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.built.Built;

@DisplayName("The common mistakes, seeded one at a time and in pairs into every scenario's sound job")
class SeededMistakesTest {
    private static final List<Seed> SEEDS = Scenarios.names().stream().flatMap(n -> Seeds.of(n).stream()).toList();

    private static List<Finding> audit(String scenario, Built built) {
        return Scenarios.AUDITOR.audit(Scenarios.plan(scenario), built).findings();
    }

    private static Built sound(String scenario) {
        return SoundJob.of(Scenarios.plan(scenario));
    }

    @Test
    @DisplayName("each is found with its panel, rule and severity, and nothing else is")
    void one() {
        List<String> missed = new ArrayList<>();
        List<String> falseOnes = new ArrayList<>();
        for (Seed seed : SEEDS) {
            List<Finding> findings = audit(seed.scenario(), seed.in(sound(seed.scenario())));
            if (!seed.found(findings)) {
                missed.add(seed + ": expected " + seed.expected() + " but found " + findings);
            } else {
                seed.beyond(findings).forEach(f -> falseOnes.add(seed + ": beyond it " + f));
            }
        }
        Map<String, Long> byKind = SEEDS.stream()
                .collect(Collectors.groupingBy(Seed::mistake, TreeMap::new, Collectors.counting()));
        System.out.printf("seeded mistakes: %d of %d found (recall %.3f), %d false findings; %s%n",
                SEEDS.size() - missed.size(), SEEDS.size(), 1 - missed.size() / (double) SEEDS.size(),
                falseOnes.size(), byKind);
        assertThat(missed).as("missed").isEmpty();
        assertThat(falseOnes).as("false findings").isEmpty();
    }

    @Test
    @DisplayName("of two on different panels both are found, and nothing else is")
    void pairs() {
        List<String> wrong = new ArrayList<>();
        int pairs = 0;
        for (int i = 0; i < SEEDS.size(); i++) {
            for (int step : new int[] {1, 19}) {
                Seed a = SEEDS.get(i).onPanel();
                Seed b = SEEDS.get((i + step) % SEEDS.size()).onPanel();
                if (a.scenario().equals(b.scenario()) && !a.panel().equals(b.panel())) {
                    pairs++;
                    List<Finding> findings = audit(a.scenario(), b.in(a.in(sound(a.scenario())))).stream()
                            .filter(f -> f.mistake() != Mistake.OVER_THE_JOBS_LIMIT).toList();
                    boolean rest = a.beyond(b.beyond(findings)).isEmpty();
                    if (!a.found(findings) || !b.found(findings) || !rest) {
                        wrong.add(a + " and " + b + ": " + findings);
                    }
                }
            }
        }
        System.out.printf("pairs of mistakes: %d of %d found exactly%n", pairs - wrong.size(), pairs);
        assertThat(wrong).isEmpty();
    }

    @Test
    @DisplayName("more than sixteen kinds occur in at least one scenario, most in several")
    void kinds() {
        assertThat(SEEDS.stream().map(Seed::mistake).distinct().count()).isGreaterThanOrEqualTo(16);
        assertThat(SEEDS.stream().map(Seed::scenario).distinct().toList()).hasSizeGreaterThanOrEqualTo(4);
    }
}
