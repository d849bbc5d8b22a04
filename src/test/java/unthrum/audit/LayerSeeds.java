package unthrum.audit;


import java.util.List;
import java.util.Optional;
import unthrum.Scenarios;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.built.Edit;
import unthrum.facts.Access;
import unthrum.facts.Heat;
import unthrum.facts.Lid;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.survey.Holder;
import unthrum.survey.Traffic;
import unthrum.survey.Wetness;

/** Layers that are missing, wrong for their place, or not those of the plan. Common practice, no source. */
final class LayerSeeds extends SeedMaker {
    LayerSeeds(String scenario) {
        super(scenario);
    }

    @Override
    void all(PlannedPanel p) {
        if (!p.layup().isEmpty()) {
            bareBay(p);
            heat(p);
            openCell(p);
            lid(p);
            stuckBlanket(p);
            dragged(p);
            differs(p);
            thinner(p);
            loose(p);
        }
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
        if (the(p, Setting.class).wet() != Wetness.DRY) {
            swap(p, Bound.CLOSED_CELL).ifPresent(m -> add("open-cell foam in a wet place", p, Change.fitted(m),
                    "FAULT LIMIT_BROKEN " + p.name() + " moisture/closed-cell-where-wet"));
        }
    }

    private void lid(PlannedPanel p) {
        all(p, Lid.class).filter(l -> l.holder() != Holder.PROP).findFirst().ifPresent(lid -> {
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

    private void stuckBlanket(PlannedPanel p) {
        Optional<Laid> loose = p.layup().layers().stream().filter(l -> l.material().removable()
                && !l.material().bonding().sticks() && List.of(Layer.DECOUPLER, Layer.BARRIER).contains(l.layer())).findFirst();
        if (the(p, Access.class).liftsOut() && loose.isPresent()) {
            add("a blanket stuck down that must lift out", p, Change.layer(loose.get().layer(), l -> Edit.with(l, "bonding",
                    Optional.of(Material.Bonding.CONTACT_ADHESIVE))),
                    "FAULT LIMIT_BROKEN " + p.name() + " fixing/blanket-lifts-out");
        }
    }

    private void dragged(PlannedPanel p) {
        if (the(p, Setting.class).traffic() == Traffic.DRAGGED_LOADS && p.layup().has(Layer.BARRIER)) {
            swap(p, Bound.BEARS_WEAR).ifPresent(m -> add("a bare barrier where loads are dragged", p, Change.fitted(m),
                    "FAULT LIMIT_BROKEN " + p.name() + " wear/dragged-over-barrier"));
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

    /** Half as thick as the catalogue's, which no limit minds where it may be light. */
    private void thinner(PlannedPanel p) {
        p.layup().of(Layer.DAMPING).ifPresent(laid -> add("a thinner sheet and nobody wrote why", p, Change.layer(
                Layer.DAMPING, l -> Edit.with(l, "thickness", Optional.of(new Quantity(laid.material().thickness().si() / 2,
                        Dimension.LENGTH)))), "UNPROVEN DIFFERS_FROM_PLAN " + p.name() + " -"));
    }

    private void loose(PlannedPanel p) {
        boolean held = p.advice().panel().own(Limit.class).stream()
                .anyMatch(j -> ((Limit) j.conclusion()).bound() == Bound.HELD && ((Limit) j.conclusion()).layer() == Layer.ANY);
        p.layup().of(Layer.DAMPING).filter(laid -> !held).ifPresent(laid -> add("a sheet laid loose that must stick", p, Change.layer(Layer.DAMPING,
                l -> Edit.with(l, "bonding", Optional.of(Material.Bonding.LOOSE))),
                "UNPROVEN DIFFERS_FROM_PLAN " + p.name() + " -"));
    }

    /** Another material for a laid layer that breaks the one bound and no other, no thicker and no heavier. */
    private Optional<Material> swap(PlannedPanel p, Bound bound) {
        return p.layup().layers().stream().flatMap(laid -> Scenarios.CATALOGUE.of(laid.layer()).stream()
                .filter(m -> broken(p, m).equals(List.of(bound)) && m.thickness().si() <= laid.material().thickness().si()
                        && m.surfaceDensity().si() <= laid.material().surfaceDensity().si())).findFirst();
    }

    private static boolean isAt(FittedLayer layer, String bay) {
        return layer.at().filter(a -> a.contains(bay)).isPresent();
    }
}
