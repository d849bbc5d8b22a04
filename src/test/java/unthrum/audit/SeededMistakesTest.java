package unthrum.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;

@DisplayName("The common mistakes, seeded one at a time and in pairs into every scenario's sound job")
class SeededMistakesTest {
    private static final List<Seed> SEEDS = Scenarios.names().stream().flatMap(n -> Seeds.of(n).stream()).toList();

    private static final Map<String, Built> SOUND = Scenarios.names().stream()
            .collect(Collectors.toMap(n -> n, n -> SoundJob.of(Scenarios.plan(n))));
    /** There are some three thousand pairs on one panel: each sixth is tried. */
    private static final int EVERY = 6;

    private static List<Finding> audit(String scenario, Built built) {
        return Scenarios.AUDITOR.audit(Scenarios.plan(scenario), built).findings();
    }

    private static Built sound(String scenario) {
        return SOUND.get(scenario);
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
        List<Seed[]> pairs = new ArrayList<>();
        for (int i = 0; i < SEEDS.size(); i++) {
            for (int step : new int[] {1, 19}) {
                Seed a = SEEDS.get(i).onPanel();
                Seed b = SEEDS.get((i + step) % SEEDS.size()).onPanel();
                if (a.scenario().equals(b.scenario()) && !a.panel().equals(b.panel())) {
                    pairs.add(new Seed[] {a, b});
                }
            }
        }
        bothFound("pairs on different panels", pairs);
    }

    @Test
    @DisplayName("of two on one panel both are found, where they do not undo each other, and nothing else is")
    void pairsOnOnePanel() {
        List<Seed[]> pairs = new ArrayList<>();
        for (Seed a : SEEDS) {
            for (Seed b : SEEDS) {
                if (a.scenario().equals(b.scenario()) && a.panel().equals(b.panel())
                        && a.mistake().compareTo(b.mistake()) < 0 && independent(a, b)) {
                    pairs.add(new Seed[] {a.onPanel(), b.onPanel()});
                }
            }
        }
        bothFound("pairs on one panel", IntStream.range(0, pairs.size()).filter(i -> i % EVERY == 0)
                .mapToObj(pairs::get).toList());
    }

    /** Whether they touch different keys of the panel. A bay left bare asks for less work, so it stands alone. */
    private static boolean independent(Seed a, Seed b) {
        BuiltPanel sound = sound(a.scenario()).panel(a.panel()).orElseThrow();
        boolean bare = a.mistake().equals("a bare bay") || b.mistake().equals("a bare bay");
        return !bare && Collections.disjoint(a.keys(sound), b.keys(sound));
    }

    private static void bothFound(String what, List<Seed[]> pairs) {
        List<String> wrong = new ArrayList<>();
        for (Seed[] pair : pairs) {
            Built built = pair[1].in(pair[0].in(sound(pair[0].scenario())));
            List<Finding> findings = audit(pair[0].scenario(), built).stream()
                    .filter(f -> f.mistake() != Mistake.OVER_THE_JOBS_LIMIT).toList();
            boolean rest = pair[0].beyond(pair[1].beyond(findings)).isEmpty();
            if (!pair[0].found(findings) || !pair[1].found(findings) || !rest) {
                wrong.add(pair[0] + " and " + pair[1] + ": " + findings);
            }
        }
        System.out.printf("%s: %d of %d found exactly%n", what, pairs.size() - wrong.size(), pairs.size());
        assertThat(pairs).isNotEmpty();
        assertThat(wrong).isEmpty();
    }

    @Test
    @DisplayName("twenty-five kinds occur in at least one scenario, most in several")
    void kinds() {
        assertThat(SEEDS.stream().map(Seed::mistake).distinct().count()).isGreaterThanOrEqualTo(25);
        assertThat(SEEDS.stream().map(Seed::scenario).distinct().toList()).hasSizeGreaterThanOrEqualTo(4);
    }
}
