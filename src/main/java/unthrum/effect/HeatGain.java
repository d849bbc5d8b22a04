package unthrum.effect;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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
import unthrum.material.Material;
import unthrum.physics.Condensation;
import unthrum.physics.Condensation.Season;
import unthrum.physics.HeatFlow;
import unthrum.physics.Moisture;
import unthrum.survey.HeatSource;

/**
 * Heat and water through one panel under one layup after another: strips of layers side by side (ISO 6946, the upper
 * limit of its resistance), the trim back on. A search asks for hundreds of layups, so each pile of layers is computed
 * once and kept. For any number of threads.
 */
public final class HeatGain {

    private final Vehicle vehicle;
    private final Panel panel;
    private final HeatPaths paths;
    private final Map<Pile, HeatPath> known = new ConcurrentHashMap<>();
    private final Flows winter;
    private final Optional<Flows> summer;
    private final Season season;
    private final double spread;
    private final HeatPath.Errors errors;

    /** Layers from the metal inward, the same only where they are the very same materials of the catalogue. */
    private record Pile(List<Material> layers) {

        @Override
        public boolean equals(Object other) {
            if (!(other instanceof Pile pile) || pile.layers.size() != layers.size()) {
                return false;
            }
            for (int i = 0; i < layers.size(); i++) {
                if (layers.get(i) != pile.layers.get(i)) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public int hashCode() {
            int hash = 1;
            for (Material layer : layers) {
                hash = 31 * hash + System.identityHashCode(layer);
            }
            return hash;
        }
    }

    /** Heat in one climate, kept for each pile of layers, since strips of many layups are alike. */
    final class Flows {
        private final Climate climate;
        private final Map<Pile, Optional<HeatFlow>> kept = new ConcurrentHashMap<>();

        private Flows(Climate climate) {
            this.climate = climate;
        }

        /** Empty where a gap is deeper than the formulas hold. */
        Optional<HeatFlow> of(Stack strip) {
            return kept.computeIfAbsent(new Pile(strip.layers()), p -> path(strip).in(climate));
        }

        /** W/m² on average over the panel; empty where a gap is deeper than the formulas hold. */
        OptionalDouble mean(List<Stack> strips) {
            double sum = 0;
            for (Stack strip : strips) {
                Optional<HeatFlow> flow = of(strip);
                if (flow.isEmpty()) {
                    return OptionalDouble.empty();
                }
                sum += strip.share() * Math.abs(flow.get().flow());
            }
            return OptionalDouble.of(sum);
        }

        /** Share by which that mean may be off either way, all strips alike; only where it can be told. */
        double error(List<Stack> strips) {
            double sum = 0;
            double off = 0;
            for (Stack strip : strips) {
                HeatFlow flow = of(strip).orElseThrow();
                sum += strip.share() * Math.abs(flow.flow());
                off += strip.share() * Math.abs(flow.flow()) * path(strip).error(climate, flow, errors);
            }
            return sum > 0 ? off / sum : 0;
        }

        private OptionalDouble watts(Layup layup) {
            OptionalDouble mean = mean(Stack.of(panel, layup));
            return mean.isPresent() ? OptionalDouble.of(mean.getAsDouble() * panel.area()) : mean;
        }
    }

    public HeatGain(Knowledge knowledge, Vehicle vehicle, PanelFacts facts) {
        this.vehicle = vehicle;
        this.panel = facts.the(Panel.class);
        this.paths = HeatPaths.of(panel, facts.the(Room.class), facts.the(Setting.class), knowledge);
        this.winter = new Flows(Climate.winter(panel, vehicle));
        this.summer = summer(facts.the(Heat.class), knowledge).map(Flows::new);
        double average = vehicle.coldest() + knowledge.number("usual/winter-mildness");
        this.season = new Season(Math.min(vehicle.indoor(), average), knowledge.number("usual/winter-spread"));
        this.spread = Math.hypot(knowledge.number("usual/skin-temperature-error"),
                knowledge.number("usual/dew-point-error"));
        this.errors = HeatPath.Errors.of(knowledge);
    }

    /** What of a panel's facts it reads: the same of these, the same heat. */
    static PanelFacts read(PanelFacts facts) {
        return facts.only(Set.of(Panel.class, Room.class, Setting.class, Heat.class));
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
        return summer.isPresent() ? summer.get().watts(layup) : OptionalDouble.empty();
    }

    /** W through the whole panel in the coldest air; empty where it cannot be told. */
    public OptionalDouble winter(Layup layup) {
        return winter.watts(layup);
    }

    /** Share of the winter's hours in which room air wets it times its area, m²; empty where nobody lives in it. */
    public OptionalDouble wet(Layup layup) {
        OptionalDouble hours = told() ? hours(Stack.of(panel, layup), 0) : OptionalDouble.empty();
        return hours.isPresent() ? OptionalDouble.of(hours.getAsDouble() * panel.area()) : hours;
    }

    Flows winter() {
        return winter;
    }

    /** Empty where nothing heats it. */
    Optional<Flows> summer() {
        return summer;
    }

    /** Whether the air inside has a dew point that matters and can be told. */
    boolean told() {
        return vehicle.livedIn() && !Double.isNaN(vehicle.dewPoint());
    }

    HeatPath path(Stack strip) {
        return known.computeIfAbsent(new Pile(strip.layers()), p -> paths.through(p.layers));
    }

    /** Empty where a gap is deeper than the formulas hold. */
    Optional<Wet> wet(List<Stack> strips) {
        OptionalDouble about = hours(strips, 0);
        if (about.isEmpty()) {
            return Optional.empty();
        }
        double coldest = Double.POSITIVE_INFINITY;
        double share = 0;
        double depth = 0;
        for (Stack strip : strips) {
            double face = path(strip).coldest(winter.of(strip).orElseThrow());
            double below = vehicle.dewPoint() - face;
            coldest = Math.min(coldest, face);
            share += strip.share() * Condensation.likelihood(below, spread);
            depth += strip.share() * Math.max(0, below);
        }
        return Optional.of(new Wet(coldest, share, depth, new Range(hours(strips, -spread).getAsDouble(),
                about.getAsDouble(), hours(strips, spread).getAsDouble())));
    }

    /** @param damper K by which the dew point lies above the reckoned one */
    private OptionalDouble hours(List<Stack> strips, double damper) {
        double sum = 0;
        for (Stack strip : strips) {
            Optional<HeatFlow> flow = winter.of(strip);
            if (flow.isEmpty()) {
                return OptionalDouble.empty();
            }
            double face = path(strip).coldest(flow.get());
            double factor = Moisture.temperatureFactor(face, vehicle.coldest(), vehicle.indoor()).orElse(1);
            double fall = Math.max(0, Math.min(1, 1 - factor));
            double dewPoint = vehicle.dewPoint() + damper;
            sum += strip.share() * Condensation.hours(fall, season, vehicle.indoor(), dewPoint, spread);
        }
        return OptionalDouble.of(sum);
    }
}
