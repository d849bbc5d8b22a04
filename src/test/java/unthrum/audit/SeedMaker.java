package unthrum.audit;


import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.built.BuiltPanel;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Limit;
import unthrum.facts.Panel;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Quantity;
import unthrum.reasoning.Limits;
import unthrum.survey.Zone;

/** Collects the mistakes of one kind on the panels of a scenario. */
abstract class SeedMaker {
    final String scenario;
    private final List<Seed> seeds = new ArrayList<>();

    SeedMaker(String scenario) {
        this.scenario = scenario;
    }

    /** Makes every mistake of the kind for which the panel gives occasion. */
    abstract void all(PlannedPanel p);

    List<Seed> seeds() {
        return seeds;
    }

    final void add(String mistake, PlannedPanel p, UnaryOperator<BuiltPanel> edit, String... expected) {
        seeds.add(Seed.of(mistake, scenario, p.name(), edit, expected));
    }

    final void add(String mistake, PlannedPanel p, UnaryOperator<BuiltPanel> edit, List<String> expected) {
        add(mistake, p, edit, expected.toArray(String[]::new));
    }

    /** A plan made to its last gram takes not one more; its own totals are rounded up to grams. */
    final Stream<String> overTheJob(PlannedPanel p, double more) {
        Plan plan = Scenarios.plan(scenario);
        boolean roof = the(p, Panel.class).zone() == Zone.ROOF && isOver(plan.totals().roofLimit(), more
                + mass(plan, r -> the(r, Panel.class).zone() == Zone.ROOF));
        boolean all = isOver(plan.totals().massLimit(), more + mass(plan, r -> true));
        return roof || all ? Stream.of("FAULT OVER_THE_JOBS_LIMIT the vehicle -") : Stream.empty();
    }

    private static boolean isOver(Optional<Quantity> limit, double mass) {
        return limit.filter(l -> mass > l.si() + 1e-9).isPresent();
    }

    private static double mass(Plan plan, Predicate<PlannedPanel> which) {
        return plan.panels().stream().filter(which).mapToDouble(r -> r.layup().mass()).sum();
    }

    /** Whether a rule asks for work on the panel as it is planned. */
    static boolean asks(PlannedPanel p, String rule) {
        return p.advice().duties().stream().flatMap(j -> j.reasons().stream()).anyMatch(r -> r.rule().id().equals(rule));
    }

    /** Whether no layer at all, or none of a kind, is barred from the panel as a whole. */
    static boolean isFree(PlannedPanel p, Layer layer) {
        return p.advice().panel().own(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .noneMatch(v -> v.place().isWholePanel() && layer.matches(v.layer()));
    }

    static Limits limits(PlannedPanel p) {
        return new Limits(p.advice().panel(), Scenarios.KNOWLEDGE);
    }

    static List<Bound> broken(PlannedPanel p, Material m) {
        return limits(p).brokenBy(m).stream().map(j -> ((Limit) j.conclusion()).bound()).distinct().toList();
    }

    /** The thinnest material of a layer that breaks no limit by itself. */
    static Optional<Material> fitting(PlannedPanel p, Layer layer) {
        return Scenarios.CATALOGUE.of(layer).stream().filter(m -> limits(p).brokenBy(m).isEmpty())
                .min(Comparator.comparing(m -> m.thickness().si()));
    }

    static Optional<List<String>> at(Bay bay) {
        return Optional.of(List.of(bay.place().part()));
    }

    static <F extends Fact> Stream<F> all(PlannedPanel p, Class<F> kind) {
        return p.advice().panel().facts().all(kind);
    }

    static <F extends Fact> F the(PlannedPanel p, Class<F> kind) {
        return p.advice().panel().facts().the(kind);
    }
}
