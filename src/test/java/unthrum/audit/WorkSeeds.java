package unthrum.audit;


import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.Travel;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Edit;
import unthrum.facts.Bay;
import unthrum.facts.Duty.Work;
import unthrum.facts.Fact;
import unthrum.facts.Lid;
import unthrum.facts.Moving;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.survey.OpeningKind;
import unthrum.survey.Tap;
import unthrum.survey.Zone;

/** Work that was not done, does not hold, or that nothing shows. Common practice, no source. */
final class WorkSeeds extends SeedMaker {
    WorkSeeds(String scenario) {
        super(scenario);
    }

    @Override
    void all(PlannedPanel p) {
        if (!p.layup().isEmpty()) {
            dirt(p);
            wax(p);
            surfaceRust(p);
            holes(p);
            drains(p);
            travel(p);
            trim(p);
            wipe(p);
            noTap(p);
            stillRings(p);
        }
    }

    private void dirt(PlannedPanel p) {
        if (asks(p, "preparation/wash")) {
            add("layers over dirt", p, Change.notDone(Work.WASH), "FAULT WORK_NOT_DONE " + p.name() + " preparation/wash");
        }
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
        }
    }

    private void trim(PlannedPanel p) {
        add("trim standing off", p, Seed.set("trim", new TrimBack(TrimBack.Fit.FREELY,
                Optional.of(new Quantity(0.005, Dimension.LENGTH)))),
                "FAULT TRIM_STANDS_OFF " + p.name() + " proof/refit-trim");
        add("trim forced back", p, Seed.set("trim", new TrimBack(TrimBack.Fit.WITH_FORCE, Optional.empty())),
                "FAULT TRIM_STANDS_OFF " + p.name() + " proof/refit-trim");
    }

    private void wipe(PlannedPanel p) {
        if (the(p, Panel.class).zone() == Zone.ROOF && p.layup().has(Layer.INSULATION)) {
            add("no solvent wipe before overhead foam", p, Change.notDone(Work.SOLVENT_WIPE),
                    "FAULT WORK_NOT_DONE " + p.name() + " preparation/second-wipe");
            add("nobody wrote of a wipe before overhead foam", p, Change.without(Work.SOLVENT_WIPE),
                    "UNPROVEN WORK_NOT_PROVEN " + p.name() + " preparation/second-wipe");
        }
    }

    private void noTap(PlannedPanel p) {
        if (p.layup().has(Layer.DAMPING)) {
            add("no tap test after", p, Seed.unset("tapAfter"), "UNPROVEN WORK_NOT_PROVEN " + p.name() + " proof/tap-again");
        }
    }

    private void stillRings(PlannedPanel p) {
        p.layup().of(Layer.DAMPING).map(l -> l.patches().get(0).place()).filter(place -> place.part().startsWith("bay "))
                .ifPresent(bay -> add("a treated bay that still rings", p, Seed.set("tapAfter", all(p, Bay.class)
                        .map(b -> b.place().equals(bay) ? Tap.RINGS : Tap.DEAD).toList()),
                        "FAULT STILL_RINGS " + bay + " proof/tap-again"));
    }

    /** Glass, pedals, latches and lids: with several of them the whole panel is named. */
    private void travel(PlannedPanel p) {
        List<Place> moving = Stream.concat(all(p, Moving.class), all(p, Lid.class)).map(Fact::place).distinct().toList();
        if (asks(p, "proof/check-travel")) {
            add("a moving part that touches", p, Seed.set("travel", Travel.TOUCHES), "DANGER TOUCHES "
                    + (moving.size() == 1 ? moving.get(0).toString() : p.name()) + " proof/check-travel");
        }
    }

    private void wax(PlannedPanel p) {
        if (asks(p, "preparation/lift-wax")) {
            add("layers over wax", p, Change.notDone(Work.WASH), "FAULT WORK_NOT_DONE " + p.name()
                    + " preparation/lift-wax");
        }
    }

    private void surfaceRust(PlannedPanel p) {
        if (asks(p, "preparation/cure-rust")) {
            add("layers over surface rust", p, Change.notDone(Work.CURE_RUST), "FAULT WORK_NOT_DONE " + p.name()
                    + " preparation/cure-rust");
        }
    }
}
