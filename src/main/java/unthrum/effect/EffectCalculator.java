package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Lid;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.survey.Holder;
import unthrum.survey.Survey;

/** Computes what layups do, whoever chose them: a plan, another plan to compare with, or hands that have finished. */
public final class EffectCalculator {

    private final Knowledge knowledge;
    private final Survey survey;
    private final Vehicle vehicle;
    private final VehicleAccount account;
    private final Heights heights;

    /**
     * @param vehicle the facts of the vehicle itself
     * @param account the yardstick of the bare vehicle
     */
    public EffectCalculator(Knowledge knowledge, Survey survey, PanelFacts vehicle, VehicleAccount account) {
        this.knowledge = knowledge;
        this.survey = survey;
        this.vehicle = vehicle.the(Vehicle.class);
        this.account = account;
        this.heights = Heights.of(this.vehicle, knowledge);
    }

    /** For a vehicle of which nobody has reckoned the bare amounts yet. */
    public static EffectCalculator of(Knowledge knowledge, Survey survey, PanelFacts vehicle, List<PanelFacts> panels) {
        List<PanelFacts> bundles = new ArrayList<>(List.of(vehicle));
        bundles.addAll(panels);
        return new EffectCalculator(knowledge, survey, vehicle, VehicleAccount.of(knowledge, survey, bundles));
    }

    /** All panels of the vehicle. */
    public Effects of(List<Treated> panels) {
        List<VehicleEffects.Known> known = panels.stream().map(p -> new VehicleEffects.Known(p, account(p), of(p))).toList();
        return new Effects(known.stream().map(VehicleEffects.Known::effect).toList(),
                new VehicleEffects(survey, account, vehicle, known).effect());
    }

    private PanelAccount account(Treated panel) {
        return account.panel(panel.facts(), panel.closed());
    }

    /** One panel by itself. */
    public PanelEffect of(Treated panel) {
        BayResponse response = new BayResponse(knowledge, vehicle, panel);
        List<BayEffect> bays = panel.facts().all(Bay.class)
                .map(b -> response.of(b, panel.facts().modes(b.place()).orElseThrow())).toList();
        Barriers barriers = new Barriers(knowledge, panel);
        return new PanelEffect(panel.facts().panel(), account(panel).gains(panel.layup()), bays,
                barriers.blocking(bays), new HeatEffects(knowledge, vehicle, panel).effect(), mass(panel),
                barriers.measured());
    }

    private MassEffect mass(Treated panel) {
        double mass = panel.layup().mass();
        Optional<MassEffect.LidLoad> lid = panel.facts().all(Lid.class).filter(l -> l.holder() != Holder.PROP)
                .map(l -> new MassEffect.LidLoad(l.margin(), l.margin() - mass)).findFirst();
        return new MassEffect(mass, heights.of(panel.facts().the(Panel.class).zone()), lid);
    }
}
