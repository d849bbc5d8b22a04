package unthrum.audit;


import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import unthrum.Scenarios;
import unthrum.built.Edit;
import unthrum.facts.Bay;
import unthrum.facts.Duty.Work;
import unthrum.facts.Fixing;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Limit;
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
import unthrum.survey.CoverKind;
import unthrum.survey.FixingKind;
import unthrum.survey.OpeningKind;
import unthrum.survey.RibKind;
import unthrum.survey.Tap;
import unthrum.survey.Traffic;
import unthrum.survey.Zone;

/**
 * Layers where none may lie: on ribs, dead bays, rust, bolts, drains, hatches and roofs. Common practice, no source.
 */
final class MisplacedSeeds extends SeedMaker {
    MisplacedSeeds(String scenario) {
        super(scenario);
    }

    @Override
    void all(PlannedPanel p) {
        if (!p.layup().isEmpty()) {
            ribs(p);
            clamped(p);
            overDrain(p);
            hatch(p);
        }
        deadBay(p);
        rust(p);
        roofBarrier(p);
        wearFace(p);
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

    /** In full, which is also more than a bay that somebody wants damped needs. */
    private void deadBay(PlannedPanel p) {
        Optional<Bay> dead = all(p, Bay.class).filter(b -> b.tap() == Tap.DEAD).findFirst();
        boolean free = isFree(p, Layer.DAMPING) && p.advice().holds().isEmpty() && limits(p).brokenBy(p.layup()).isEmpty();
        Optional<Material> damping = fitting(p, Layer.DAMPING);
        if (dead.isPresent() && free && damping.isPresent() && !isTooHeavy(p, dead.get(), damping.get())) {
            Bay bay = dead.get();
            List<String> expected = new ArrayList<>();
            expected.add("WASTE LAYER_WHERE_NONE_MAY_BE " + bay.place() + " diagnosis/dead-bay");
            if (p.advice().wants().stream().anyMatch(w -> w.layer() == Layer.DAMPING && w.place().equals(bay.place()))) {
                expected.add("WASTE COVERS_TOO_MUCH " + bay.place() + " damping/middle-first");
            }
            overTheJob(p, bay.area() * damping.get().surfaceDensity().si()).forEach(expected::add);
            add("a dead bay covered in full", p, Change.plus(SoundJob.layer(damping.get().material(), at(bay), 1)), expected);
        }
    }

    /** Whether the mass would be more than the panel bears: then a lid or a tall roof speaks too. */
    private static boolean isTooHeavy(PlannedPanel p, Bay bay, Material m) {
        return p.advice().panel().own(Limit.class).stream().map(j -> (Limit) j.conclusion())
                .anyMatch(l -> l.bound() == Bound.MASS && p.layup().mass() + bay.area() * m.surfaceDensity().si() > l.value());
    }

    private void rust(PlannedPanel p) {
        boolean live = p.advice().holds().stream().flatMap(j -> j.reasons().stream())
                .anyMatch(r -> r.rule().id().equals("preparation/live-rust-waits"));
        if (live && p.advice().wants().stream().anyMatch(w -> w.stands() && w.layer() == Layer.DAMPING)) {
            fitting(p, Layer.DAMPING).ifPresent(m -> add("a layer over rust", p, Change.plus(SoundJob.layer(m.material(),
                    at(wanting(p)), 0.05)).andThen(b -> Edit.with(b, "done",
                    Optional.of(b.done().orElseThrow().stream().filter(d -> !d.work().contains(Work.CURE_RUST) && !d.work().contains(Work.REPAINT)).toList())))
                    ::apply, "FAULT COVERED_BEFORE_READY " + p.name() + " preparation/live-rust-waits"));
        }
    }

    private static Bay wanting(PlannedPanel p) {
        return all(p, Bay.class).filter(b -> p.advice().wants().stream().anyMatch(w -> w.stands()
                && w.place().equals(b.place()))).findFirst().orElseThrow();
    }

    private void clamped(PlannedPanel p) {
        all(p, Fixing.class).collect(Collectors.toMap(Fixing::kind, f -> f, (a, b) -> a, TreeMap::new)).forEach((kind, f) -> {
            String said = switch (kind) {
                case SEAT_BOLT, BELT_ANCHOR, CHILD_SEAT_ANCHOR -> "DANGER LAYER_WHERE_NONE_MAY_BE " + f.place()
                        + " fixing/anchors-metal-to-metal";
                case BRACKET -> "DANGER LAYER_WHERE_NONE_MAY_BE " + f.place() + " fixing/clamped-parts-bare";
                case THREADED_INSERT, CONSOLE_STUD -> "FAULT LAYER_WHERE_NONE_MAY_BE " + f.place()
                        + " fixing/inserts-and-studs-clear";
                default -> "";
            };
            if (!said.isEmpty()) {
                add("a layer under a clamped joint", p, Change.first(l -> Change.over(l, f.place().part())), said);
            }
        });
    }

    private void overDrain(PlannedPanel p) {
        all(p, Opening.class).filter(o -> o.kind() == OpeningKind.DRAIN).findFirst().ifPresent(drain ->
                add("a layer over a drain", p, Change.first(l -> Change.over(l, drain.place().part())),
                        "FAULT LAYER_WHERE_NONE_MAY_BE " + drain.place() + " sealing/drain"));
    }

    private void hatch(PlannedPanel p) {
        all(p, ServiceCover.class).filter(c -> c.kind() != CoverKind.SERVICE_PLUG_COVER).findFirst().ifPresent(c ->
                add("a sheet across a service hatch", p, Change.first(l -> Change.over(l, c.place().part())),
                        "FAULT WORK_NOT_DONE " + c.place() + " fixing/cut-along-cover"));
    }

    /** The roof's own limits on weight and room speak too where the barrier is past them. */
    private void roofBarrier(PlannedPanel p) {
        boolean free = isNotBarred(p);
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
                    overTheJob(p, 0.01 * p.advice().panel().openArea(Layer.BARRIER) * m.surfaceDensity().si())
                            .forEach(expected::add);
                    boolean tall = all(p, Panel.class).anyMatch(r -> p.layup().mass() + 0.01 * r.area() * m.surfaceDensity().si()
                            > r.area() * Scenarios.KNOWLEDGE.number("mass/roof-average"));
                    if (tall && p.advice().panel().own(Limit.class).stream().anyMatch(j -> j.reasons().stream()
                            .anyMatch(r -> r.rule().id().equals("mass/tall-roof")))) {
                        expected.add("FAULT LIMIT_BROKEN " + p.name() + " mass/tall-roof");
                    }
                    add("a roof loaded with barrier", p, Change.plus(SoundJob.layer(m.material(), Optional.empty(), 0.01)),
                            expected.toArray(String[]::new));
                });
    }

    private void wearFace(PlannedPanel p) {
        Traffic traffic = the(p, Setting.class).traffic();
        double room = the(p, Room.class).clearance() - p.layup().thickness() - 0.012;
        boolean free = isNotBarred(p);
        if (List.of(Traffic.DRAWERS, Traffic.CARPET, Traffic.MAT).contains(traffic) && free && p.advice().holds().isEmpty()) {
            fitting(p, Layer.WEAR_FACE).filter(m -> m.thickness().si() < room).ifPresent(m ->
                    add("a wear face that is hidden", p, Change.plus(SoundJob.layer(m.material(), Optional.empty(), 0.05)),
                            "WASTE LAYER_WHERE_NONE_MAY_BE " + p.name() + " wear/hidden-face"));
        }
    }

    /** Whether no veto keeps every layer off the panel. */
    private static boolean isNotBarred(PlannedPanel p) {
        return p.advice().panel().own(Veto.class).stream().map(j -> (Veto) j.conclusion())
                .noneMatch(v -> v.place().isWholePanel() && v.layer() == Layer.ANY);
    }
}
