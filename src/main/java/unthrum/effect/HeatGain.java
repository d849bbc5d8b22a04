package unthrum.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.derive.Climate;
import unthrum.derive.HeatPath;
import unthrum.derive.HeatPaths;
import unthrum.derive.PanelFacts;
import unthrum.effect.HeatEffect.Wet;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Condensation;
import unthrum.physics.Condensation.Season;
import unthrum.physics.HeatFlow;
import unthrum.physics.Moisture;
import unthrum.survey.HeatSource;

/**
 * Heat and water through one panel under one layup after another: strips of layers side by side (ISO 6946, the upper
 * limit of its resistance), the trim back on. A search asks for hundreds of layups, so each answer is quick.
 */
public final class HeatGain {

    private final Vehicle vehicle;
    private final Panel panel;
    private final HeatPaths paths;
    private final Climate winter;
    private final Optional<Climate> summer;
    private final Season season;
    private final double spread;
    private final HeatPath.Errors errors;

    public HeatGain(Knowledge knowledge, Vehicle vehicle, PanelFacts facts) {
        this.vehicle = vehicle;
        this.panel = facts.the(Panel.class);
        this.paths = HeatPaths.of(panel, facts.the(Room.class), facts.the(Setting.class), knowledge);
        this.winter = Climate.winter(panel, vehicle);
        this.summer = summer(facts.the(Heat.class), knowledge);
        double average = winter.outside() + knowledge.number("usual/winter-mildness");
        this.season = new Season(Math.min(winter.inside(), average), knowledge.number("usual/winter-spread"));
        this.spread = Math.hypot(knowledge.number("usual/skin-temperature-error"),
                knowledge.number("usual/dew-point-error"));
        this.errors = HeatPath.Errors.of(knowledge);
    }

    private Optional<Climate> summer(Heat heat, Knowledge knowledge) {
        return switch (heat.from()) {
            case NONE -> Optional.empty();
            case SUN -> Optional.of(Climate.sun(panel, knowledge));
            default -> Optional.of(Climate.hotMetal(panel, heat.peak(), knowledge.number("usual/summer-inside")));
        };
    }

    /** W through the whole panel in summer; empty where it cannot be told or nothing heats it. */
    public OptionalDouble summer(Layup layup) {
        return summer.map(s -> watts(layup, s)).orElse(OptionalDouble.empty());
    }

    /** W through the whole panel in the coldest air; empty where it cannot be told. */
    public OptionalDouble winter(Layup layup) {
        return watts(layup, winter);
    }

    /** Share of the winter's hours in which room air wets it times its area, m²; empty where nobody lives in it. */
    public OptionalDouble wet(Layup layup) {
        if (!told()) {
            return OptionalDouble.empty();
        }
        Optional<Wet> wet = wet(Stack.of(panel, layup));
        return wet.isPresent() ? OptionalDouble.of(wet.get().hours().about() * panel.area()) : OptionalDouble.empty();
    }

    private OptionalDouble watts(Layup layup, Climate climate) {
        OptionalDouble mean = mean(Stack.of(panel, layup), climate);
        return mean.isPresent() ? OptionalDouble.of(mean.getAsDouble() * panel.area()) : mean;
    }

    Climate winter() {
        return winter;
    }

    /** Empty where nothing heats it. */
    Optional<Climate> summer() {
        return summer;
    }

    /** Whether the air inside has a dew point that matters and can be told. */
    boolean told() {
        return vehicle.livedIn() && !Double.isNaN(vehicle.dewPoint());
    }

    HeatPath path(Stack stack) {
        return paths.through(stack.layers());
    }

    /** W/m² on average over the panel; empty where a gap is deeper than the formulas hold. */
    OptionalDouble mean(List<Stack> strips, Climate climate) {
        double sum = 0;
        for (Stack strip : strips) {
            Optional<HeatFlow> flow = path(strip).in(climate);
            if (flow.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += strip.share() * Math.abs(flow.get().flow());
        }
        return OptionalDouble.of(sum);
    }

    /** Share by which that flow may be off either way, all strips alike; only where it can be told. */
    double error(List<Stack> strips, Climate climate) {
        double sum = 0;
        double off = 0;
        for (Stack strip : strips) {
            HeatPath path = path(strip);
            HeatFlow flow = path.in(climate).orElseThrow();
            sum += strip.share() * Math.abs(flow.flow());
            off += strip.share() * Math.abs(flow.flow()) * path.error(climate, flow, errors);
        }
        return sum > 0 ? off / sum : 0;
    }

    /** Empty where a gap is deeper than the formulas hold. */
    Optional<Wet> wet(List<Stack> strips) {
        double coldest = Double.POSITIVE_INFINITY;
        double share = 0;
        double depth = 0;
        double few = 0;
        double about = 0;
        double many = 0;
        for (Stack strip : strips) {
            HeatPath path = path(strip);
            Optional<HeatFlow> flow = path.in(winter);
            if (flow.isEmpty()) {
                return Optional.empty();
            }
            double face = path.coldest(flow.get());
            double below = vehicle.dewPoint() - face;
            coldest = Math.min(coldest, face);
            share += strip.share() * Condensation.likelihood(below, spread);
            depth += strip.share() * Math.max(0, below);
            few += strip.share() * hours(face, -spread);
            about += strip.share() * hours(face, 0);
            many += strip.share() * hours(face, spread);
        }
        return Optional.of(new Wet(coldest, share, depth, new Range(few, about, many)));
    }

    private double hours(double face, double wetter) {
        double factor = Moisture.temperatureFactor(face, winter.outside(), winter.inside()).orElse(1);
        double fall = Math.max(0, Math.min(1, 1 - factor));
        return Condensation.hours(fall, season, winter.inside(), vehicle.dewPoint() + wetter, spread);
    }
}
