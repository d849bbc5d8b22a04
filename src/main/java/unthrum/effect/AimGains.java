package unthrum.effect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.Gain;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.AimGain.LessSound;
import unthrum.effect.AimGain.PanelPart;
import unthrum.effect.HeatEffect.Dew;
import unthrum.effect.HeatEffect.Flow;
import unthrum.effect.VehicleEffects.Known;
import unthrum.physics.Estimate;
import unthrum.survey.Aim;
import unthrum.survey.Survey;

/** What each of the client's aims gains: the panels' own gains, added up. */
final class AimGains {

    private final Survey survey;
    private final VehicleAccount account;
    private final List<Known> panels;

    AimGains(Survey survey, VehicleAccount account, List<Known> panels) {
        this.survey = survey;
        this.account = account;
        this.panels = panels.stream().filter(Known::borders).toList();
    }

    List<AimGain> all() {
        return survey.aims().stream().map(this::gain).toList();
    }

    private AimGain gain(Aim aim) {
        if (!account.tells(aim)) {
            return new AimGain(aim, 0, Estimate.outside(untold(aim)), List.of(), List.of());
        }
        List<PanelPart> parts = panels.stream().map(p -> part(p, aim)).toList();
        return new AimGain(aim, account.weights().get(aim),
                Estimate.within(Range.sum(parts.stream().map(PanelPart::taken).toList())), parts, kinds(aim));
    }

    private String untold(Aim aim) {
        return switch (account.meter(aim)) {
            case TRADE -> "a rattle is found and fixed by hand; no formula tells its gain";
            case SOUND -> "no surveyed panel gives it off";
            case HEAT_IN -> "nothing heats a surveyed panel, or heat through none can be told";
            case HEAT_OUT -> "heat through no panel can be told";
            case WETNESS -> panels.isEmpty() ? "no surveyed panel bounds the room that people sit in"
                    : panels.get(0).effect().heat().dew().isWithin() ? "no surveyed panel gets wet"
                    : panels.get(0).effect().heat().dew().reason();
        };
    }

    private static PanelPart part(Known panel, Aim aim) {
        PanelGain gain = panel.effect().gains().stream().filter(g -> g.aim() == aim).findFirst().orElseThrow();
        return new PanelPart(panel.name(), gain.bare(), gain.taken());
    }

    private List<Gain> kinds(Aim aim) {
        return switch (account.meter(aim)) {
            case TRADE -> List.of();
            case SOUND -> sound(aim);
            case HEAT_IN -> List.of(heat(HeatEffect::summer));
            case HEAT_OUT -> List.of(heat(HeatEffect::winter));
            case WETNESS -> List.of(dew());
        };
    }

    private List<Gain> sound(Aim aim) {
        List<Gain> ways = new ArrayList<>();
        for (Way way : account.ways()) {
            if (way.aim() == aim) {
                ways.add(new LessSound(way.kind() == Way.Kind.SHAKEN,
                        Range.sum(panels.stream().map(p -> p.account().taken(way, p.layup())).toList())));
            }
        }
        return ways;
    }

    private LessHeat heat(Function<HeatEffect, Estimate<Flow>> season) {
        List<Flow> told = panels.stream().map(p -> season.apply(p.effect().heat())).filter(Estimate::isWithin)
                .map(Estimate::value).toList();
        return new LessHeat(told.stream().mapToDouble(Flow::wattsBare).sum(),
                told.stream().mapToDouble(Flow::wattsTreated).sum(), told.stream().mapToDouble(Flow::uncertainty).max().orElseThrow(), panels.stream()
                .filter(p -> !season.apply(p.effect().heat()).isWithin()).map(Known::name).toList());
    }

    private DrierFaces dew() {
        List<Known> told = panels.stream().filter(p -> p.effect().heat().dew().isWithin()).toList();
        Known worst = told.stream().min(Comparator.comparingDouble(p -> dew(p).treated().coldest())).orElseThrow();
        double area = over(told, d -> 1.0);
        return new DrierFaces(over(told, d -> d.bare().share()), over(told, d -> d.treated().share()),
                over(told, d -> d.bare().depth()) / area, over(told, d -> d.treated().depth()) / area,
                dew(worst).treated().coldest() - dew(worst).dewPoint(), worst.name());
    }

    private static double over(List<Known> panels, Function<Dew, Double> share) {
        return panels.stream().mapToDouble(p -> share.apply(dew(p)) * p.panel().area()).sum();
    }

    private static Dew dew(Known panel) {
        return panel.effect().heat().dew().value();
    }
}
