package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import unthrum.effect.HeatEffect.Dew;
import unthrum.effect.HeatEffect.Face;
import unthrum.effect.HeatEffect.Flow;
import unthrum.effect.HeatEffect.Heated;
import unthrum.effect.HeatEffect.Wet;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.physics.Condensation;
import unthrum.physics.Estimate;
import unthrum.physics.HeatFlow;
import unthrum.derive.Climate;
import unthrum.survey.HeatSource;

/** Heat through a panel with strips of different layers side by side (ISO 6946, the upper limit of its resistance). */
final class HeatEffects {

    private static final String TOO_DEEP = "the air gap before the trim is deeper than the formulas hold";

    private final Knowledge knowledge;
    private final Vehicle vehicle;
    private final Panel panel;
    private final Room room;
    private final Heat heat;
    private final List<Stack> stacks;

    HeatEffects(Knowledge knowledge, Vehicle vehicle, Treated treated) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
        this.panel = treated.facts().the(Panel.class);
        this.room = treated.facts().the(Room.class);
        this.heat = treated.facts().the(Heat.class);
        this.stacks = Stack.of(panel, treated.layup());
    }

    HeatEffect effect() {
        Climate winter = Climate.winter(panel, vehicle);
        return new HeatEffect(summer(), flow(winter), atPeak(), dew(winter));
    }

    private Estimate<Flow> summer() {
        if (heat.from() == HeatSource.NONE) {
            return Estimate.outside("nothing heats it in summer");
        }
        return flow(heat.from() == HeatSource.SUN ? Climate.sun(panel, knowledge)
                : Climate.hotMetal(panel, heat.peak(), knowledge.number("usual/summer-inside")));
    }

    private Estimate<Flow> flow(Climate climate) {
        Optional<Double> bare = mean(Stack.of(panel, Layup.NOTHING), climate);
        Optional<Double> treated = mean(stacks, climate);
        return bare.isPresent() && treated.isPresent()
                ? Estimate.within(new Flow(bare.get(), treated.get(), panel.area(),
                        knowledge.number("usual/heat-flow-error")))
                : Estimate.outside(TOO_DEEP);
    }

    private Optional<Double> mean(List<Stack> strips, Climate climate) {
        double sum = 0;
        for (Stack strip : strips) {
            Optional<HeatFlow> flow = path(strip).in(climate);
            if (flow.isEmpty()) {
                return Optional.empty();
            }
            sum += strip.share() * Math.abs(flow.get().flow());
        }
        return Optional.of(sum);
    }

    private HeatPath path(Stack stack) {
        return HeatPath.of(panel, room, stack, knowledge);
    }

    /** The metal at its peak, the air inside as hot as in a closed vehicle; a gap too deep counts as open air. */
    private List<Heated> atPeak() {
        Stack full = stacks.get(0);
        HeatPath path = path(full);
        Climate peak = Climate.hotMetal(panel, heat.peak(), knowledge.number("usual/closed-vehicle"));
        Optional<HeatFlow> flow = path.in(peak);
        List<Heated> heated = new ArrayList<>();
        for (Material material : full.layers()) {
            int layer = path.names().indexOf(material.material());
            double face = flow.isPresent() && layer > 0 ? flow.get().peak(layer) : heat.peak();
            heated.add(new Heated(material, face, material.serviceTo().si()));
        }
        return heated;
    }

    private Estimate<Dew> dew(Climate winter) {
        if (!vehicle.livedIn()) {
            return Estimate.outside("nobody lives in it, so the air inside is as dry as the air outside");
        }
        if (Double.isNaN(vehicle.dewPoint())) {
            return Estimate.outside("the dew point lies outside the range of the formula");
        }
        Optional<Wet> bare = wet(Stack.of(panel, Layup.NOTHING), winter);
        Optional<Wet> treated = wet(stacks, winter);
        return bare.isPresent() && treated.isPresent()
                ? Estimate.within(new Dew(vehicle.dewPoint(), bare.get(), treated.get(), faces(stacks.get(0), winter)))
                : Estimate.outside(TOO_DEEP);
    }

    private Optional<Wet> wet(List<Stack> strips, Climate winter) {
        double coldest = Double.POSITIVE_INFINITY;
        double share = 0;
        double depth = 0;
        for (Stack strip : strips) {
            OptionalDouble face = faces(strip, winter).stream().filter(Face::reached).mapToDouble(Face::temperature)
                    .min();
            if (face.isEmpty()) {
                return Optional.empty();
            }
            double below = vehicle.dewPoint() - face.getAsDouble();
            coldest = Math.min(coldest, face.getAsDouble());
            share += below > 0 ? strip.share() : 0;
            depth += Math.max(0, below) * strip.share();
        }
        return Optional.of(new Wet(coldest, share, depth));
    }

    /** Nothing where the gap is too deep. */
    private List<Face> faces(Stack stack, Climate winter) {
        HeatPath path = path(stack);
        return path.in(winter).map(flow -> {
            Condensation wet = Condensation.wherever(flow, vehicle.dewPoint());
            return IntStream.range(0, path.names().size()).mapToObj(i -> new Face(path.names().get(i),
                    flow.faces().get(i + 1), wet.margins().get(i + 1), path.reached(i))).toList();
        }).orElse(List.of());
    }
}
