package unthrum.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import unthrum.Scenarios;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Edit;
import unthrum.facts.Access;
import unthrum.facts.Bay;
import unthrum.facts.Duty.Work;
import unthrum.facts.Fact;
import unthrum.facts.Fixing;
import unthrum.facts.Heat;
import unthrum.facts.Lid;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Rib;
import unthrum.facts.Room;
import unthrum.facts.ServiceCover;
import unthrum.facts.Setting;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.Laid;
import unthrum.reasoning.Limits;
import unthrum.survey.FixingKind;
import unthrum.survey.OpeningKind;
import unthrum.survey.RibKind;
import unthrum.survey.Tap;
import unthrum.survey.Traffic;
import unthrum.survey.Zone;

/**
 * The common mistakes of the trade, each on every panel of a scenario where it can be made. What must be found is
 * written here by hand from the rules' own texts and not asked of the audit. Common practice, no source.
 */
final class Seeds {
    private final String scenario;
    private final List<Seed> seeds = new ArrayList<>();

    private Seeds(String scenario) {
        this.scenario = scenario;
    }

    static List<Seed> of(String scenario) {
        Seeds seeds = new Seeds(scenario);
        Scenarios.plan(scenario).panels().forEach(seeds::all);
        return seeds.seeds;
    }

    private void all(PlannedPanel p) {
        if (!p.layup().isEmpty()) {
            ribs(p);
            bareBay(p);
            dirt(p);
            holes(p);
            drains(p);
            clamped(p);
            trim(p);
            heat(p);
            openCell(p);
            lid(p);
            hatch(p);
            wipe(p);
            dragged(p);
            noTap(p);
            differs(p);
        }
        deadBay(p);
        rust(p);
        roofBarrier(p);
        wearFace(p);
    }

    private void add(String mistake, PlannedPanel p, UnaryOperator<BuiltPanel> edit, String... expected) {
        seeds.add(Seed.of(mistake, scenario, p.name(), edit, expected));
    }

    /** Where a rib of that kind stays bare of damping and foam: under a lining it bears on, of all layers. */
    private void ribs(PlannedPanel p) {
        boolean lined = the(p, Room.class).liningOnRibs();
        all(p, Rib.class).filter(r -> p.layup().has(Layer.DAMPING)).findFirst().ifPresent(rib -> {
            boolean fit = lined || rib.kind() == RibKind.FOLD || rib.kind() == RibKind.RIVETED_STRIP;
            String rule = switch (rib.kind()) {
                case BOX_SECTION, TOP_HAT, SECOND_SKIN -> "damping/rib-bare";
                case BEAD -> "damping/bead-bare";
                case FOLD, RIVETED_STRIP -> "damping/seam-bare";
            };
            add("a covered rib", p, Change.layer(Layer.DAMPING, l -> Change.over(l, rib.place().part())),
                    (fit ? "FAULT" : "WASTE") + " LAYER_WHERE_NONE_MAY_BE " + rib.place() + " " + rule);
        });
    }

    private void bareBay(PlannedPanel p) {
        Optional<Laid> damping = p.layup().of(Layer.DAMPING);
        boolean absorber = p.layup().has(Layer.ABSORBER);
        if (damping.isPresent() && (damping.get().patches().size() > 1 || !absorber)) {
            String bay = damping.get().patches().get(0).place().part();
            String rule = p.advice().wants().stream().filter(w -> w.stands() && w.place().part().equals(bay))
                    .flatMap(w -> w.judgement().reasons().stream()).map(r -> r.rule().id()).findFirst().orElseThrow();
            add("a bare bay", p, b -> Edit.with(b, "layers", Optional.of(b.layers().orElseThrow().stream()
                    .filter(l -> !isAt(l, bay)).toList())), "FAULT WANTED_LAYER_MISSING " + p.name() + ", " + bay + " " + rule);
        }
    }

    private void deadBay(PlannedPanel p) {
        boolean quiet = p.advice().panel().own(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .noneMatch(v -> v.place().isWholePanel() && Layer.DAMPING.matches(v.layer()));
        all(p, Bay.class).filter(b -> b.tap() == Tap.DEAD).findFirst().filter(b -> quiet && p.advice().holds().isEmpty())
                .flatMap(b -> fitting(p, Layer.DAMPING)).ifPresent(m -> {
                    Bay bay = all(p, Bay.class).filter(b -> b.tap() == Tap.DEAD).findFirst().orElseThrow();
                    add("a dead bay covered", p, Change.plus(SoundJob.layer(m.material(), at(bay), 0.05)), Stream.concat(
                            Stream.of("WASTE LAYER_WHERE_NONE_MAY_BE " + bay.place() + " diagnosis/dead-bay"),
                            overRoof(p, 0.05 * bay.area() * m.surfaceDensity().si())).toArray(String[]::new));
                });
    }

    private void dirt(PlannedPanel p) {
        boolean washes = p.advice().duties().stream().anyMatch(j -> j.reasons().stream()
                .anyMatch(r -> r.rule().id().equals("preparation/wash")));
        if (washes) {
            add("layers over dirt", p, Change.notDone(Work.WASH), "FAULT WORK_NOT_DONE " + p.name() + " preparation/wash");
        }
    }

    private void rust(PlannedPanel p) {
        boolean live = p.advice().holds().stream().flatMap(j -> j.reasons().stream())
                .anyMatch(r -> r.rule().id().equals("preparation/live-rust-waits"));
        if (live && p.advice().wants().stream().anyMatch(w -> w.stands() && w.layer() == Layer.DAMPING)) {
            fitting(p, Layer.DAMPING).ifPresent(m -> add("a layer over rust", p, Change.plus(SoundJob.layer(m.material(),
                    at(wanting(p)), 0.05)).andThen(b -> Edit.with(b, "done",
                    Optional.of(b.done().orElseThrow().stream().filter(d -> !d.work().contains(Work.CURE_RUST) && !d.work().contains(Work.REPAIR)).toList())))
                    ::apply, "FAULT COVERED_BEFORE_READY " + p.name() + " preparation/live-rust-waits"));
        }
    }

    private static Bay wanting(PlannedPanel p) {
        return all(p, Bay.class).filter(b -> p.advice().wants().stream().anyMatch(w -> w.stands()
                && w.place().equals(b.place()))).findFirst().orElseThrow();
    }

    private void holes(PlannedPanel p) {
        boolean barrier = p.layup().has(Layer.BARRIER);
        p.advice().closings().stream().filter(c -> barrier).findFirst().ifPresent(c -> {
            String rule = c.want().judgement().reasons().get(0).rule().id();
            String part = c.opening().place().part();
            add("an open hole behind a barrier", p, b -> Edit.with(b, "closed", Optional.of(
                    b.closed().orElseThrow().stream().filter(x -> !x.equals(part)).toList())),
                    "FAULT WORK_NOT_DONE " + c.opening().place() + " " + rule);
        });
    }

    private void drains(PlannedPanel p) {
        List<Opening> drains = all(p, Opening.class).filter(o -> o.kind() == OpeningKind.DRAIN).toList();
        if (!drains.isEmpty()) {
            String place = drains.size() == 1 ? drains.get(0).place().toString() : p.name();
            add("blocked drains", p, Seed.set("drains", Drains.BLOCKED), "FAULT WORK_NOT_DONE " + place + " proof/drains-run");
            add("a layer over a drain", p, Change.first(l -> Change.over(l, drains.get(0).place().part())),
                    "FAULT LAYER_WHERE_NONE_MAY_BE " + drains.get(0).place() + " sealing/drain");
        }
    }

    private void clamped(PlannedPanel p) {
        all(p, Fixing.class).filter(f -> List.of(FixingKind.SEAT_BOLT, FixingKind.BELT_ANCHOR,
                FixingKind.CHILD_SEAT_ANCHOR).contains(f.kind())).findFirst().ifPresent(f ->
                add("a layer under a clamped joint", p, Change.first(l -> Change.over(l, f.place().part())),
                        "DANGER LAYER_WHERE_NONE_MAY_BE " + f.place() + " fixing/anchors-metal-to-metal"));
    }

    private void trim(PlannedPanel p) {
        add("trim standing off", p, Seed.set("trim", new TrimBack(TrimBack.Fit.FREELY,
                Optional.of(new Quantity(0.005, Dimension.LENGTH)))),
                "FAULT TRIM_STANDS_OFF " + p.name() + " proof/refit-trim");
        add("trim forced back", p, Seed.set("trim", new TrimBack(TrimBack.Fit.WITH_FORCE, Optional.empty())),
                "FAULT TRIM_STANDS_OFF " + p.name() + " proof/refit-trim");
    }

    /** The roof's own limits on weight and room speak too where the barrier is past them. */
    private void roofBarrier(PlannedPanel p) {
        boolean free = p.advice().panel().own(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .noneMatch(v -> v.place().isWholePanel() && v.layer() == Layer.ANY);
        if (the(p, Panel.class).zone() != Zone.ROOF || !free || !p.advice().holds().isEmpty()) {
            return;
        }
        Scenarios.CATALOGUE.of(Layer.BARRIER).stream().filter(m -> broken(p, m).stream()
                .allMatch(b -> b == Bound.LIGHT_ENOUGH)).findFirst().ifPresent(m -> {
                    List<String> expected = new ArrayList<>();
                    expected.add("DANGER LAYER_WHERE_NONE_MAY_BE " + p.name() + " barrier/not-on-roof");
                    if (m.surfaceDensity().si() > Scenarios.KNOWLEDGE.number("mass/roof-layer")) {
                        expected.add("FAULT LIMIT_BROKEN " + p.name() + " mass/light-roof-layer");
                    }
                    if (p.layup().thickness() + m.thickness().si() > the(p, Room.class).clearance()
                            - Scenarios.KNOWLEDGE.number("fit/margin-hard")) {
                        expected.add("FAULT LIMIT_BROKEN " + p.name() + " fit/room-under-trim");
                    }
                    overRoof(p, 0.01 * p.advice().panel().openArea(Layer.BARRIER) * m.surfaceDensity().si())
                            .forEach(expected::add);
                    boolean tall = all(p, Panel.class).anyMatch(r -> p.layup().mass() + 0.01 * r.area() * m.surfaceDensity().si()
                            > r.area() * Scenarios.KNOWLEDGE.number("mass/roof-average"));
                    if (tall && p.advice().panel().own(unthrum.facts.Limit.class).stream().anyMatch(j -> j.reasons().stream()
                            .anyMatch(r -> r.rule().id().equals("mass/tall-roof")))) {
                        expected.add("FAULT LIMIT_BROKEN " + p.name() + " mass/tall-roof");
                    }
                    add("a roof loaded with barrier", p, Change.plus(SoundJob.layer(m.material(), Optional.empty(), 0.01)),
                            expected.toArray(String[]::new));
                });
    }

    /** A roof planned to its last gram takes not one more; the plan's own totals are rounded up to grams. */
    private Stream<String> overRoof(PlannedPanel p, double more) {
        double roof = Scenarios.plan(scenario).panels().stream().filter(r -> the(r, Panel.class).zone() == Zone.ROOF)
                .mapToDouble(r -> r.layup().mass()).sum();
        boolean over = the(p, Panel.class).zone() == Zone.ROOF
                && Scenarios.plan(scenario).totals().roofLimit().filter(l -> roof + more > l.si() + 1e-9).isPresent();
        return over ? Stream.of("FAULT OVER_THE_JOBS_LIMIT the vehicle -") : Stream.empty();
    }

    private void wearFace(PlannedPanel p) {
        Traffic traffic = the(p, Setting.class).traffic();
        double room = the(p, Room.class).clearance() - p.layup().thickness() - 0.012;
        boolean free = p.advice().panel().own(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .noneMatch(v -> v.place().isWholePanel() && v.layer() == Layer.ANY);
        if (List.of(Traffic.DRAWERS, Traffic.CARPET, Traffic.MAT).contains(traffic) && free && p.advice().holds().isEmpty()) {
            fitting(p, Layer.WEAR_FACE).filter(m -> m.thickness().si() < room).ifPresent(m ->
                    add("a wear face that is hidden", p, Change.plus(SoundJob.layer(m.material(), Optional.empty(), 0.05)),
                            "WASTE LAYER_WHERE_NONE_MAY_BE " + p.name() + " wear/hidden-face"));
        }
    }

    private void heat(PlannedPanel p) {
        swap(p, Bound.SERVICE_TEMPERATURE).ifPresent(material -> {
            Heat heat = the(p, Heat.class);
            double least = heat.peak() + Scenarios.KNOWLEDGE.number("heat/margin");
            String rule = heat.peak() <= Scenarios.KNOWLEDGE.number("heat/warm") ? "heat/closed-vehicle"
                    : material.serviceTo().si() < least ? "heat/peak-with-margin" : "heat/sun-on-dark-metal";
            add("a layer past its temperature", p, Change.fitted(material), "FAULT LIMIT_BROKEN " + p.name() + " " + rule);
        });
    }

    private void openCell(PlannedPanel p) {
        if (the(p, Setting.class).wet() != unthrum.survey.Wetness.DRY) {
            swap(p, Bound.CLOSED_CELL).ifPresent(m -> add("open-cell foam in a wet place", p, Change.fitted(m),
                    "FAULT LIMIT_BROKEN " + p.name() + " moisture/closed-cell-where-wet"));
        }
    }

    private void lid(PlannedPanel p) {
        all(p, Lid.class).filter(l -> l.holder() != unthrum.survey.Holder.PROP).findFirst().ifPresent(lid -> {
            double allowed = lid.margin() * Scenarios.KNOWLEDGE.number("mass/lid-share");
            Laid laid = p.layup().layers().get(0);
            double times = 1.2 * allowed / laid.mass();
            Quantity thick = new Quantity(laid.material().thickness().si() * times, Dimension.LENGTH);
            if (p.layup().thickness() + thick.si() < the(p, Room.class).clearance() - 0.01) {
                add("a lid too heavy for its struts", p, Change.layer(laid.layer(), l -> Edit.with(l, "thickness",
                        Optional.of(thick))), "DANGER LIMIT_BROKEN " + p.name() + " mass/lid-holder");
            }
        });
    }

    private void hatch(PlannedPanel p) {
        all(p, ServiceCover.class).filter(c -> c.kind() != unthrum.survey.CoverKind.SERVICE_PLUG_COVER).findFirst()
                .ifPresent(c -> add("a sheet across a service hatch", p, Change.first(l -> Change.over(l, c.place().part())),
                        "FAULT WORK_NOT_DONE " + c.place() + " fixing/cut-along-cover"));
        Optional<Laid> loose = p.layup().layers().stream().filter(l -> l.material().removable()
                && !l.material().bonding().sticks() && List.of(Layer.DECOUPLER, Layer.BARRIER).contains(l.layer())).findFirst();
        if (the(p, Access.class).liftsOut() && loose.isPresent()) {
            add("a blanket stuck down that must lift out", p, Change.layer(loose.get().layer(), l -> Edit.with(l, "bonding",
                    Optional.of(Material.Bonding.CONTACT_ADHESIVE))),
                    "FAULT LIMIT_BROKEN " + p.name() + " fixing/blanket-lifts-out");
        }
    }

    private void wipe(PlannedPanel p) {
        if (the(p, Panel.class).zone() == Zone.ROOF && p.layup().has(Layer.INSULATION)) {
            add("no solvent wipe before overhead foam", p, Change.notDone(Work.SOLVENT_WIPE),
                    "FAULT WORK_NOT_DONE " + p.name() + " preparation/second-wipe");
            add("nobody wrote of a wipe before overhead foam", p, Change.without(Work.SOLVENT_WIPE),
                    "UNPROVEN WORK_NOT_PROVEN " + p.name() + " preparation/second-wipe");
        }
    }

    private void dragged(PlannedPanel p) {
        if (the(p, Setting.class).traffic() == Traffic.DRAGGED_LOADS && p.layup().has(Layer.BARRIER)) {
            swap(p, Bound.BEARS_WEAR).ifPresent(m -> add("a bare barrier where loads are dragged", p, Change.fitted(m),
                    "FAULT LIMIT_BROKEN " + p.name() + " wear/dragged-over-barrier"));
        }
    }

    private void noTap(PlannedPanel p) {
        if (p.layup().has(Layer.DAMPING)) {
            add("no tap test after", p, Seed.unset("tapAfter"), "UNPROVEN WORK_NOT_PROVEN " + p.name() + " proof/tap-again");
        }
    }

    private void differs(PlannedPanel p) {
        p.layup().layers().stream().filter(l -> l.layer() != Layer.HEAT_SHIELD).findFirst().ifPresent(laid ->
                Scenarios.CATALOGUE.of(laid.layer()).stream().filter(m -> !m.equals(laid.material())
                        && limits(p).brokenBy(m).isEmpty() && m.thickness().si() <= laid.material().thickness().si()
                        && m.surfaceDensity().si() <= laid.material().surfaceDensity().si()).findFirst().ifPresent(m ->
                        add("another material and nobody wrote why", p, Change.layer(laid.layer(), l -> Edit.with(l, "material",
                                m.material())), "UNPROVEN DIFFERS_FROM_PLAN " + p.name() + " -")));
    }

    /** Another material for a laid layer that breaks the one bound and no other, no thicker and no heavier. */
    private Optional<Material> swap(PlannedPanel p, Bound bound) {
        return p.layup().layers().stream().flatMap(laid -> Scenarios.CATALOGUE.of(laid.layer()).stream()
                .filter(m -> broken(p, m).equals(List.of(bound)) && m.thickness().si() <= laid.material().thickness().si()
                        && m.surfaceDensity().si() <= laid.material().surfaceDensity().si())).findFirst();
    }

    private static List<Bound> broken(PlannedPanel p, Material m) {
        return limits(p).brokenBy(m).stream().map(j -> ((unthrum.facts.Limit) j.conclusion()).bound()).distinct().toList();
    }

    /** The thinnest material of a layer that breaks no limit by itself. */
    private static Optional<Material> fitting(PlannedPanel p, Layer layer) {
        return Scenarios.CATALOGUE.of(layer).stream().filter(m -> limits(p).brokenBy(m).isEmpty())
                .min(java.util.Comparator.comparing(m -> m.thickness().si()));
    }

    private static Limits limits(PlannedPanel p) {
        return new Limits(p.advice().panel(), Scenarios.KNOWLEDGE);
    }

    private static boolean isAt(FittedLayer layer, String bay) {
        return layer.at().filter(a -> a.contains(bay)).isPresent();
    }

    private static Optional<List<String>> at(Bay bay) {
        return Optional.of(List.of(bay.place().part()));
    }

    private static <F extends Fact> Stream<F> all(PlannedPanel p, Class<F> kind) {
        return p.advice().panel().facts().all(kind);
    }

    private static <F extends Fact> F the(PlannedPanel p, Class<F> kind) {
        return p.advice().panel().facts().the(kind);
    }
}
