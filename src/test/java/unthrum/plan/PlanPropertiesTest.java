package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import unthrum.facts.Access;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Panel;
import unthrum.facts.Veto;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Standing;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.reasoning.Drafts;
import unthrum.reasoning.Drafts.Draft;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.effect.Patch;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Zone;

@Label("On any survey")
class PlanPropertiesTest {

    private static final int TRIES = 60;
    private static final Planner PLANNER = new Planner(Knowledge.load(), Catalogue.load());

    /** Two values of one key, the second the better one. */
    record Better(String key, String was, String is) {
    }

    @Provide
    Arbitrary<Draft> panels() {
        return Drafts.panels();
    }

    @Provide
    Arbitrary<List<Draft>> vehicles() {
        return Drafts.panels().list().ofMinSize(1).ofMaxSize(4);
    }

    @Provide
    Arbitrary<String> heads() {
        return Drafts.heads();
    }

    @Provide
    Arbitrary<Better> clearances() {
        return steps("clearance", List.of("1.5 mm", "2.5 mm", "3 mm", "4 mm", "5.5 mm", "6 mm", "7 mm", "8 mm", "9 mm",
                "10 mm", "12 mm", "15 mm", "18 mm", "22 mm", "30 mm", "45 mm"), c -> c);
    }

    @Provide
    Arbitrary<Better> peaks() {
        Arbitrary<String> sources = Arbitraries.of("sun", "exhaust", "engine", "heater");
        return sources.flatMap(s -> steps("heat", List.of("150", "130", "115", "105", "95", "88", "78", "70", "60", "45"),
                p -> "{from: " + s + ", peak: " + p + " degC}"));
    }

    @Provide
    Arbitrary<Better> reaches() {
        return steps("reach", List.of("none", "part, reachable: 10 %", "part, reachable: 30 %",
                "part, reachable: 70 %", "open"), r -> r);
    }

    /** Any value and any later one of a list. */
    private static Arbitrary<Better> steps(String key, List<String> rising, Function<String, String> write) {
        return Arbitraries.integers().between(0, rising.size() - 2).flatMap(i ->
                Arbitraries.integers().between(i + 1, rising.size() - 1).map(j ->
                        new Better(key, write.apply(rising.get(i)), write.apply(rising.get(j)))));
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("the plan does not depend on the order of panels and keys")
    void order(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels, @ForAll long one, @ForAll long other) {
        assertThat(byName(PLANNER.plan(Drafts.survey(head, panels, one))))
                .isEqualTo(byName(PLANNER.plan(Drafts.survey(head, panels, other))));
    }

    private static Map<String, PlannedPanel> byName(Plan plan) {
        return plan.panels().stream().collect(Collectors.toMap(PlannedPanel::name, p -> p, (a, b) -> a, TreeMap::new));
    }

    @Property(tries = 4 * TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("more clearance removes no layer whose reason stands, but for another that serves as much")
    void clearance(@ForAll("heads") String head, @ForAll("panels") Draft panel, @ForAll("clearances") Better better) {
        neverRemoves(head, panel, better);
    }

    @Property(tries = 4 * TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("less heat removes no layer whose reason stands, but for another that serves as much")
    void heat(@ForAll("heads") String head, @ForAll("panels") Draft panel, @ForAll("peaks") Better better) {
        neverRemoves(head, panel, better);
    }

    @Property(tries = 2 * TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("better reach removes no layer whose reason stands, where no mass binds the panel")
    void reach(@ForAll("heads") String head, @ForAll("panels") Draft panel, @ForAll("reaches") Better better) {
        // a lid or a tall roof bears so many kilograms, and a layer over a larger share of it weighs more
        Assume.that(advice(head, panel).panel().own(Limit.class).stream()
                .noneMatch(j -> ((Limit) j.conclusion()).bound() == Limit.Bound.MASS));
        neverRemoves(head, panel, better);
    }

    /**
     * A layer whose reason stands goes only where another one, which could not be laid before, takes its room and
     * serves as much: two wants that do not both fit are the one case in which something must give.
     */
    private static void neverRemoves(String head, Draft panel, Better better) {
        PanelAdvice before = advice(head, panel.with(better.key(), better.was()));
        PanelAdvice after = advice(head, panel.with(better.key(), better.is()));
        boolean lost = before.layup().layers().stream().map(Laid::layer)
                .filter(l -> after.wants().stream().anyMatch(w -> w.layer() == l && w.stands()))
                .anyMatch(l -> !after.layup().has(l));
        if (lost) {
            String as = "%s → %s%n%s%n%s%n%s".formatted(before.layup(), after.layup(), better, head, panel);
            assertThat(after.layup().layers()).as(as).anyMatch(l -> !before.layup().has(l.layer()));
            assertThat(weight(after.layup(), after)).as(as).isGreaterThanOrEqualTo(weight(before.layup(), after));
        }
    }

    /** The weight of the wants that a layup serves. */
    private static double weight(Layup layup, PanelAdvice on) {
        return layup.layers().stream().filter(l -> l.layer() != Layer.WEAR_FACE).mapToDouble(laid -> on.wants().stream()
                .filter(w -> w.layer() == laid.layer()).mapToDouble(WeighedWant::weight).max().orElse(0)).sum();
    }

    private static PanelAdvice advice(String head, Draft panel) {
        return PLANNER.plan(Drafts.survey(head, List.of(panel), 0)).panels().get(0).advice();
    }

    @Property(tries = 2 * TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("a veto of standing safety is never outvoted")
    void safety(@ForAll("heads") String head, @ForAll("panels") Draft panel) {
        PanelAdvice advice = advice(head, panel);
        for (Judgement judgement : advice.panel().all(Veto.class)) {
            if (judgement.standing() == Standing.SAFETY) {
                Veto veto = (Veto) judgement.conclusion();
                assertThat(advice.wants()).filteredOn(w -> w.layer().matches(veto.layer()))
                        .filteredOn(w -> w.place().within(veto.place())).noneMatch(WeighedWant::stands);
                assertThat(advice.layup().layers().stream().filter(l -> l.layer().matches(veto.layer()))
                        .flatMap(l -> l.patches().stream())).noneMatch(p -> p.place().within(veto.place()));
                assertThat(advice.closings()).noneMatch(c -> c.opening().place().within(veto.place())
                        && Layer.SEAL.matches(veto.layer()));
            }
        }
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("coverage, thickness and mass add up, from the patch to the vehicle")
    void addsUp(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels) {
        Plan plan = PLANNER.plan(Drafts.survey(head, panels, 0));
        double mass = 0;
        double roof = 0;
        for (PlannedPanel planned : plan.panels()) {
            Panel panel = planned.advice().panel().facts().the(Panel.class);
            double here = 0;
            for (Laid laid : planned.layup().layers()) {
                double area = laid.patches().stream().mapToDouble(p -> checked(p, planned)).sum();
                assertThat(area).isPositive().isLessThanOrEqualTo(panel.area() + 1e-9);
                here += area * laid.material().surfaceDensity().si();
            }
            assertThat(planned.layup().mass()).isCloseTo(here, within(1e-9));
            assertThat(planned.layup().thickness()).isCloseTo(planned.layup().layers().stream()
                    .filter(l -> l.layer() != Layer.HEAT_SHIELD).mapToDouble(l -> l.material().thickness().si()).sum(),
                    within(1e-12));
            mass += here;
            roof += panel.zone() == Zone.ROOF ? here : 0;
        }
        // totals are kept in whole grams, rounded for each patch
        double rounding = 0.001 * plan.panels().stream().flatMap(p -> p.layup().layers().stream())
                .mapToInt(l -> l.patches().size()).sum() + 1e-9;
        assertThat(plan.totals().mass()).isCloseTo(mass, within(rounding));
        assertThat(plan.totals().roof()).isCloseTo(roof, within(rounding));
    }

    private static double checked(Patch patch, PlannedPanel planned) {
        assertThat(patch.coverage()).isBetween(0.0, 1.0);
        double reachable = planned.advice().panel().facts().the(Access.class).reachable();
        planned.advice().panel().facts().all(Bay.class).filter(b -> b.place().equals(patch.place())).forEach(bay ->
                assertThat(patch.area()).isLessThanOrEqualTo(bay.area() * Math.min(patch.coverage(), reachable) + 1e-9));
        return patch.area();
    }

    @Property(tries = TRIES, edgeCases = EdgeCasesMode.NONE)
    @Label("every panel has exactly one verdict, with a case, and the verdict fits the layup")
    void oneVerdict(@ForAll("heads") String head, @ForAll("vehicles") List<Draft> panels) {
        Plan plan = PLANNER.plan(Drafts.survey(head, panels, 0));
        assertThat(plan.panels()).hasSameSizeAs(panels).extracting(PlannedPanel::name).doesNotHaveDuplicates();
        for (PlannedPanel planned : plan.panels()) {
            assertThat(planned.advice().panel().judgements()).isNotEmpty();
            boolean laid = planned.verdict() == Verdict.COVER || planned.verdict() == Verdict.PATCH;
            assertThat(planned.layup().isEmpty()).isEqualTo(!laid);
            boolean dampingOnly = planned.layup().layers().stream().allMatch(l -> l.layer() == Layer.DAMPING);
            assertThat(planned.verdict() == Verdict.PATCH).isEqualTo(laid && dampingOnly);
        }
    }
}
