package unthrum.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.effect.VehicleEffect.Load;
import unthrum.effect.VehicleEffect.LoudestBay;
import unthrum.effect.VehicleEffect.WeakestWall;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Setting;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Balance;
import unthrum.physics.ThirdOctave;
import unthrum.derive.PanelFacts;
import unthrum.survey.NoiseSource;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/** Adds up the panels: mass and balance, the gain of each aim, and the weakest paths. */
final class VehicleEffects {

    private final Vehicle vehicle;
    private final List<Known> panels;
    private final AimGains gains;

    /** A panel with what its layers do. */
    record Known(PanelFacts facts, PanelEffect effect) {

        Panel panel() {
            return facts.the(Panel.class);
        }

        /** Whether it bounds the room people sit in; a bonnet keeps its sound, heat and cold outside. */
        boolean borders() {
            return panel().zone() != Zone.BONNET;
        }

        String name() {
            return facts.panel();
        }

        NoiseSource nearNoise() {
            return facts.the(Setting.class).nearNoise();
        }
    }

    VehicleEffects(Knowledge knowledge, Survey survey, Vehicle vehicle, List<Known> panels) {
        this.vehicle = vehicle;
        this.panels = panels;
        this.gains = new AimGains(knowledge, survey, panels);
    }

    VehicleEffect effect() {
        return new VehicleEffect(load(), gains.all(), loudestBay(), weakestWall());
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

    private Optional<LoudestBay> loudestBay() {
        List<LoudestBay> left = new ArrayList<>();
        for (Known known : panels.stream().filter(Known::borders).toList()) {
            List<Bay> bays = known.facts().all(Bay.class).toList();
            for (int i = 0; i < bays.size(); i++) {
                BayEffect effect = known.effect().bays().get(i);
                left.add(new LoudestBay(effect.place(), bays.get(i).drive() * AimGains.left(effect), effect.treated()));
            }
        }
        double all = left.stream().mapToDouble(LoudestBay::share).sum();
        return left.stream().max(Comparator.comparingDouble(LoudestBay::share)).filter(b -> b.share() > 0)
                .map(b -> new LoudestBay(b.place(), b.share() / all, b.treated()));
    }

    /** In the band in which most panels can be told, the lower of equals. */
    private Optional<WeakestWall> weakestWall() {
        List<Known> near = panels.stream().filter(Known::borders)
                .filter(p -> p.nearNoise() != NoiseSource.NONE).toList();
        ThirdOctave best = null;
        long most = 0;
        for (ThirdOctave band : Barriers.BANDS) {
            long told = near.stream().filter(p -> Walls.losses(p, band).isWithin()).count();
            if (told > most) {
                most = told;
                best = band;
            }
        }
        return best == null ? Optional.empty() : Optional.of(Walls.of(near, best).weakest());
    }
}
