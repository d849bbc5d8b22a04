package unthrum.effect;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Bay;
import unthrum.facts.Lid;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.derive.PanelFacts;
import unthrum.survey.Holder;
import unthrum.survey.Survey;

/** Computes what layups do, whoever chose them: a plan, another plan to compare with, or hands that have finished. */
public final class EffectCalculator {

    private final Knowledge knowledge;
    private final Survey survey;
    private final Vehicle vehicle;
    private final Heights heights;

    /** @param vehicle the facts of the vehicle itself */
    public EffectCalculator(Knowledge knowledge, Survey survey, PanelFacts vehicle) {
        this.knowledge = knowledge;
        this.survey = survey;
        this.vehicle = vehicle.the(Vehicle.class);
        this.heights = Heights.of(this.vehicle, knowledge);
    }

    /** All panels of the vehicle. */
    public Effects of(List<Treated> panels) {
        List<VehicleEffects.Known> known = panels.stream()
                .map(p -> new VehicleEffects.Known(p.facts(), of(p))).toList();
        return new Effects(known.stream().map(VehicleEffects.Known::effect).toList(),
                new VehicleEffects(knowledge, survey, vehicle, known).effect());
    }

    /** One panel by itself. */
    public PanelEffect of(Treated panel) {
        BayResponse response = new BayResponse(knowledge, vehicle, panel);
        List<BayEffect> bays = panel.facts().all(Bay.class)
                .map(b -> response.of(b, panel.facts().modes(b.place()).orElseThrow())).toList();
        return new PanelEffect(panel.facts().panel(), bays, new Barriers(knowledge, panel).blocking(bays),
                new HeatEffects(knowledge, vehicle, panel).effect(), mass(panel));
    }

    private MassEffect mass(Treated panel) {
        double mass = panel.layup().mass();
        Optional<MassEffect.LidLoad> lid = panel.facts().all(Lid.class).filter(l -> l.holder() != Holder.PROP)
                .map(l -> new MassEffect.LidLoad(l.margin(), l.margin() - mass)).findFirst();
        return new MassEffect(mass, heights.of(panel.facts().the(Panel.class).zone()), lid);
    }
}
