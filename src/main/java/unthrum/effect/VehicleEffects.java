package unthrum.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import unthrum.derive.PanelFacts;
import unthrum.effect.AimGain.PanelPart;
import unthrum.effect.VehicleEffect.Load;
import unthrum.effect.VehicleEffect.MostLeft;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;
import unthrum.physics.Balance;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/** Adds up the panels: mass and balance, the gain of each aim, and where most is left. */
final class VehicleEffects {

    private final Survey survey;
    private final VehicleAccount account;
    private final Vehicle vehicle;
    private final List<Known> panels;

    /** A panel with what its layers do. */
    record Known(Treated treated, PanelAccount account, PanelEffect effect) {

        PanelFacts facts() {
            return treated.facts();
        }

        Layup layup() {
            return treated.layup();
        }

        Panel panel() {
            return facts().the(Panel.class);
        }

        boolean borders() {
            return VehicleAccount.borders(panel());
        }

        String name() {
            return facts().panel();
        }
    }

    VehicleEffects(Survey survey, VehicleAccount account, Vehicle vehicle, List<Known> panels) {
        this.survey = survey;
        this.account = account;
        this.vehicle = vehicle;
        this.panels = panels;
    }

    VehicleEffect effect() {
        List<AimGain> gains = new AimGains(survey, account, panels).all();
        return new VehicleEffect(load(), gains, next(gains), account.least());
    }

    private Load load() {
        double[] masses = panels.stream().mapToDouble(p -> p.effect().mass().mass()).toArray();
        double[] heights = panels.stream().mapToDouble(p -> p.effect().mass().height()).toArray();
        double total = Balance.total(masses);
        double roof = panels.stream().filter(p -> p.panel().zone() == Zone.ROOF)
                .mapToDouble(p -> p.effect().mass().mass()).sum();
        return new Load(total, roof, Balance.centreHeight(masses, heights), vehicle.payloadLeft() > 0
                ? OptionalDouble.of(Balance.shareOfPayload(total, vehicle.payloadLeft())) : OptionalDouble.empty());
    }

    private List<MostLeft> next(List<AimGain> gains) {
        List<MostLeft> next = new ArrayList<>();
        for (AimGain gain : gains) {
            double left = gain.panels().stream().mapToDouble(VehicleEffects::left).sum();
            gain.panels().stream().max(Comparator.comparingDouble(VehicleEffects::left)).filter(p -> left(p) > 0)
                    .ifPresent(p -> next.add(new MostLeft(gain.aim(), p.panel(), left(p) / left, isTreated(p.panel()))));
        }
        return next;
    }

    private static double left(PanelPart panel) {
        return panel.bare() - panel.taken().about();
    }

    private boolean isTreated(String panel) {
        return panels.stream().anyMatch(p -> p.name().equals(panel) && !p.layup().isEmpty());
    }
}
