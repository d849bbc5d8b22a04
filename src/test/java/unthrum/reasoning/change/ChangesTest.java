package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Assume;
import unthrum.material.Layer;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.Vehicles.Made;
import unthrum.survey.OpeningState;
import unthrum.survey.PanelEntry;

@Label("What would change a panel")
class ChangesTest {

    @Provide
    Arbitrary<Made> panels() {
        return Vehicles.panels();
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    @Label("each stated change, made and judged anew, does what is said of it")
    void doesWhatItSays(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            for (Change change : new Changes(trial, made.panel()).single()) {
                assertThat(effects(made, change.turns().get(0).lever(), change.turns().get(0).to()))
                        .as("%s", change).containsAll(change.effects()).isNotEmpty();
            }
        }
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    @Label("one step less of the same fact does not yet do it")
    void notOneStepLess(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            for (Change change : new Changes(trial, made.panel()).single()) {
                Turn turn = change.turns().get(0);
                List<Object> smaller = smaller(turn);
                if (!smaller.isEmpty()) {
                    assertThat(effects(made, turn.lever(), smaller.get(smaller.size() - 1)))
                            .as("%s", change).doesNotContainAnyElementsOf(change.effects());
                }
            }
        }
    }

    @Property(tries = 6, shrinking = ShrinkingMode.OFF)
    @Label("no smaller change of the same fact does it, and none is left out but what comes and goes within the reading")
    void everyStep(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial(); PanelTrial each = made.trial()) {
            Changes changes = new Changes(trial, made.panel());
            for (Lever lever : changes.levers()) {
                if (lever.isScale()) {
                    for (boolean upward : List.of(true, false)) {
                        Map<Effect, Object> found = found(changes.of(lever), upward);
                        Map<Effect, List<Spell>> spells = spells(each, made.panel(), lever, upward);
                        assertThat(found).as(lever.name()).allSatisfy((effect, value) -> assertThat(spells.get(effect))
                                .extracting(Spell::from).contains(value));
                        int grain = Sweep.grain(lever, lever.scale(upward).size());
                        spells.values().removeIf(all -> all.stream().noneMatch(s -> s.steps > grain));
                        assertThat(found.keySet()).as(lever.name()).containsAll(spells.keySet());
                    }
                }
            }
        }
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    @Label("nobody is told to heat a panel or to take room from it, nor to work for its staying bare")
    void advice(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            Changes changes = new Changes(trial, made.panel());
            List<Change> all = new ArrayList<>(changes.single());
            all.addAll(changes.pairs(all));
            for (Change change : all) {
                if (change.use() == Change.Use.ADVICE) {
                    assertThat(change.after().verdict() != Verdict.LEAVE_BARE || !change.after().spots().isEmpty())
                            .as("%s", change).isTrue();
                    change.turns().stream().filter(t -> t.lever().isScale()).forEach(t -> assertThat(
                            Measured.upward(t)).as("%s", change).isEqualTo(!t.lever().key().equals("peak")));
                }
            }
        }
    }

    @Example
    @Label("nobody is told to open a hole so that it can be closed")
    void closedAgain() {
        int closed = 0;
        for (Path file : Vehicles.FILES) {
            try (PanelTrial trial = Vehicles.trial(Vehicles.survey(file))) {
                for (PanelEntry panel : Vehicles.survey(file).panels()) {
                    for (Lever state : trial.levers(panel).stream().filter(l -> l.key().equals("opening state")).toList()) {
                        Changes changes = new Changes(trial, state.set(panel, OpeningState.CLOSED));
                        List<Change> opened = changes.levers().stream().filter(l -> l.name().equals(state.name()))
                                .flatMap(l -> changes.of(l).stream()).filter(c -> c.effects().stream().allMatch(
                                        e -> e instanceof Effect.Gains g && g.spot().layer() == Layer.SEAL)).toList();
                        assertThat(opened).extracting(Change::use).doesNotContain(Change.Use.ADVICE);
                        closed += opened.size();
                    }
                }
            }
        }
        assertThat(closed).isPositive();
    }

    @Property(tries = 6, shrinking = ShrinkingMode.OFF)
    @Label("two changes together bring a layer that no single one brings, and each is needed")
    void pairs(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            Changes changes = new Changes(trial, made.panel());
            List<Change> single = changes.single();
            for (Change pair : changes.pairs(single)) {
                assertThat(pair.turns()).hasSize(2);
                Set<Effect> alone = new HashSet<>();
                pair.turns().forEach(t -> alone.addAll(effects(made, t.lever(), t.to())));
                assertThat(pair.effects()).as("%s", pair).anyMatch(e -> e instanceof Effect.Gains && !alone.contains(e));
                PanelEntry both = Edits.apply(made.panel(), pair.turns());
                assertThat(judged(made, both)).isEqualTo(pair.after());
            }
        }
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    @Label("a fact set to what it is today changes nothing once it is stated")
    void todayChangesNothing(@ForAll("panels") Made made) {
        try (PanelTrial trial = made.trial()) {
            List<Lever> stated = new Changes(trial, made.panel()).levers().stream().filter(Lever::stated).toList();
            Assume.that(!stated.isEmpty());
            for (Lever lever : stated) {
                assertThat(effects(made, lever, lever.today().orElseThrow())).as(lever.name()).isEmpty();
            }
        }
    }

    private static List<Object> smaller(Turn turn) {
        return turn.lever().isScale() ? turn.lever().scale(Measured.upward(turn)).stream()
                .takeWhile(v -> !v.equals(turn.to())).toList() : List.of();
    }

    /** Each effect of the changes one way, with the value that brings it. */
    private static Map<Effect, Object> found(List<Change> changes, boolean upward) {
        Map<Effect, Object> found = new HashMap<>();
        changes.stream().filter(c -> Measured.upward(c.turns().get(0)) == upward)
                .forEach(c -> c.effects().forEach(e -> found.put(e, c.turns().get(0).to())));
        return found;
    }

    /** So many steps on end that a fact has an effect. */
    private record Spell(Object from, int steps) {
    }

    /** Every step judged. */
    private static Map<Effect, List<Spell>> spells(PanelTrial trial, PanelEntry panel, Lever lever, boolean upward) {
        Outcome today = Outcome.of(trial.advise(panel));
        Map<Effect, List<Spell>> spells = new HashMap<>();
        List<Effect> before = List.of();
        for (Object value : lever.scale(upward)) {
            List<Effect> here = Effect.between(today, Outcome.of(trial.advise(lever.set(panel, value))));
            for (Effect effect : here) {
                List<Spell> own = spells.computeIfAbsent(effect, e -> new ArrayList<>());
                Spell last = before.contains(effect) ? own.remove(own.size() - 1) : new Spell(value, 0);
                own.add(new Spell(last.from, last.steps + 1));
            }
            before = here;
        }
        return spells;
    }

    /** Judged in a session of its own that has seen no other panel. */
    private static Outcome judged(Made made, PanelEntry panel) {
        try (PanelTrial fresh = made.trial()) {
            return Outcome.of(fresh.advise(panel));
        }
    }

    private static List<Effect> effects(Made made, Lever lever, Object value) {
        return Effect.between(judged(made, made.panel()), judged(made, lever.set(made.panel(), value)));
    }
}
