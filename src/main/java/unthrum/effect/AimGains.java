package unthrum.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import unthrum.effect.AimGain.CalmerBays;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.Gain;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.HeatEffect.Dew;
import unthrum.effect.HeatEffect.Flow;
import unthrum.effect.VehicleEffects.Known;
import unthrum.facts.Setting;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Estimate;
import unthrum.physics.Excitation;
import unthrum.physics.Skin;
import unthrum.physics.ThirdOctave;
import unthrum.derive.AimBand;
import unthrum.derive.BayModes;
import unthrum.derive.MetalSheet;
import unthrum.survey.Aim;
import unthrum.survey.NoiseSource;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/** What each of the client's aims gains. */
final class AimGains {

    private static final Set<NoiseSource> ENGINE =
            Set.of(NoiseSource.ENGINE, NoiseSource.GEARBOX, NoiseSource.MOTOR, NoiseSource.PUMP);

    private final Knowledge knowledge;
    private final Survey survey;
    private final List<Known> panels;

    AimGains(Knowledge knowledge, Survey survey, List<Known> panels) {
        this.knowledge = knowledge;
        this.survey = survey;
        this.panels = panels.stream().filter(Known::borders).toList();
    }

    List<AimGain> all() {
        return survey.aims().stream().map(aim -> new AimGain(aim, gains(aim))).toList();
    }

    private List<Estimate<? extends Gain>> gains(Aim aim) {
        return switch (aim) {
            case ROAD_DRUMMING -> List.of(calmer(aim, p -> true));
            case RAIN_NOISE -> List.of(calmer(aim, p -> p.panel().zone() == Zone.ROOF));
            case ENGINE_NOISE -> both(aim, p -> ENGINE.contains(p.nearNoise()));
            case EXHAUST_DRONE -> both(aim, p -> p.nearNoise() == NoiseSource.EXHAUST);
            case WIND_NOISE -> walls(p -> p.nearNoise() == NoiseSource.WIND || p.facts().the(Setting.class).nearEar());
            case RATTLES -> List.of(Estimate.outside("a rattle is found and fixed by hand; no formula tells its gain"));
            case SUMMER_HEAT -> List.of(heat(HeatEffect::summer));
            case WINTER_COLD -> List.of(heat(HeatEffect::winter));
            case CONDENSATION -> List.of(dew());
        };
    }

    private List<Estimate<? extends Gain>> both(Aim aim, Predicate<Known> near) {
        List<Estimate<? extends Gain>> both = new ArrayList<>(walls(near));
        both.add(calmer(aim, p -> true));
        return List.copyOf(both);
    }

    private Estimate<CalmerBays> calmer(Aim aim, Predicate<Known> which) {
        Band band = AimBand.of(aim, survey, knowledge).orElseThrow();
        List<Driven> bays = new ArrayList<>();
        for (Known known : panels.stream().filter(which).toList()) {
            Skin skin = MetalSheet.of(known.panel()).skin();
            for (BayEffect effect : known.effect().bays()) {
                BayModes modes = known.facts().modes(effect.place()).orElseThrow();
                bays.add(new Driven(Excitation.drive(skin, modes.shape(), band), effect));
            }
        }
        double drive = sum(bays, b -> 1);
        if (drive == 0) {
            return Estimate.outside("no surveyed bay is driven in the band");
        }
        List<Driven> treated = bays.stream().filter(b -> b.effect().treated()).toList();
        List<Driven> told = treated.stream().filter(b -> b.effect().response().isWithin()).toList();
        return Estimate.within(new CalmerBays(sum(treated, b -> 1) / drive, fall(told), fall(bays),
                (sum(treated, b -> 1) - sum(told, b -> 1)) / drive));
    }

    private record Driven(double drive, BayEffect effect) {
    }

    private static double sum(List<Driven> bays, Function<BayEffect, Number> left) {
        return bays.stream().mapToDouble(b -> b.drive() * left.apply(b.effect()).doubleValue()).sum();
    }

    private static Range fall(List<Driven> bays) {
        double before = sum(bays, b -> 1);
        if (before == 0) {
            return Range.exactly(0);
        }
        return new Range(fall(before, sum(bays, b -> left(b, Range::low))),
                fall(before, sum(bays, b -> left(b, Range::about))),
                fall(before, sum(bays, b -> left(b, Range::high))));
    }

    private static double fall(double before, double after) {
        return 10 * Math.log10(before / after);
    }

    /** Share of the sound power that a bay still gives off in the workshop's warmth; all where no gain can be told. */
    static double left(BayEffect bay) {
        return left(bay, Range::about);
    }

    private static double left(BayEffect bay, Function<Range, Double> which) {
        return bay.response().isWithin()
                ? Math.pow(10, -which.apply(bay.response().value().room().calmer()) / 10) : 1;
    }

    private List<Estimate<? extends Gain>> walls(Predicate<Known> near) {
        List<Known> wall = panels.stream().filter(near).toList();
        if (wall.isEmpty()) {
            return List.of(Estimate.outside("no surveyed panel stands next to the source"));
        }
        List<Estimate<? extends Gain>> gains = new ArrayList<>();
        for (ThirdOctave band : Barriers.BANDS) {
            Walls.of(wall, band).better().ifPresent(b -> gains.add(Estimate.within(b)));
        }
        return gains.isEmpty()
                ? List.of(Estimate.outside("the panels next to the source ring too high for the mass law")) : gains;
    }

    private Estimate<LessHeat> heat(Function<HeatEffect, Estimate<Flow>> season) {
        List<Flow> told = panels.stream().map(p -> season.apply(p.effect().heat())).filter(Estimate::isWithin)
                .map(Estimate::value).toList();
        if (told.isEmpty()) {
            return Estimate.outside("heat through no panel can be told");
        }
        return Estimate.within(new LessHeat(told.stream().mapToDouble(Flow::wattsBare).sum(),
                told.stream().mapToDouble(Flow::wattsTreated).sum(),
                told.stream().mapToDouble(Flow::uncertainty).max().orElseThrow(), panels.stream()
                .filter(p -> !season.apply(p.effect().heat()).isWithin()).map(Known::name).toList()));
    }

    private Estimate<DrierFaces> dew() {
        List<Known> told = panels.stream().filter(p -> p.effect().heat().dew().isWithin()).toList();
        if (told.isEmpty()) {
            return Estimate.outside(panels.isEmpty() ? "no surveyed panel bounds the room that people sit in"
                    : panels.get(0).effect().heat().dew().reason());
        }
        Known worst = told.stream().min(Comparator.comparingDouble(p -> dew(p).treated().coldest())).orElseThrow();
        double area = over(told, d -> 1.0);
        return Estimate.within(new DrierFaces(over(told, d -> d.bare().share()), over(told, d -> d.treated().share()),
                over(told, d -> d.bare().depth()) / area, over(told, d -> d.treated().depth()) / area,
                dew(worst).treated().coldest() - dew(worst).dewPoint(), worst.name()));
    }

    private static double over(List<Known> panels, Function<Dew, Double> share) {
        return panels.stream().mapToDouble(p -> share.apply(dew(p)) * p.panel().area()).sum();
    }

    private static Dew dew(Known panel) {
        return panel.effect().heat().dew().value();
    }
}
