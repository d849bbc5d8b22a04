package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import unthrum.derive.Climate;
import unthrum.derive.HeatPath;
import unthrum.effect.HeatEffect.Dew;
import unthrum.effect.HeatEffect.Face;
import unthrum.effect.HeatEffect.Flow;
import unthrum.effect.HeatEffect.Heated;
import unthrum.effect.HeatEffect.Wet;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.physics.Estimate;
import unthrum.physics.HeatFlow;

/** What {@link HeatGain} computes for one layup, laid out before and after. */
final class HeatEffects {

    private static final String TOO_DEEP = "the air gap before the trim is deeper than the formulas hold";

    private final Knowledge knowledge;
    private final Vehicle vehicle;
    private final Panel panel;
    private final Heat heat;
    private final HeatGain gain;
    private final List<Stack> bare;
    private final List<Stack> stacks;

    HeatEffects(Knowledge knowledge, Vehicle vehicle, Treated treated) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
        this.panel = treated.facts().the(Panel.class);
        this.heat = treated.facts().the(Heat.class);
        this.gain = new HeatGain(knowledge, vehicle, treated.facts());
        this.bare = Stack.of(panel, Layup.NOTHING);
        this.stacks = Stack.of(panel, treated.layup());
    }

    HeatEffect effect() {
        return new HeatEffect(gain.summer().map(this::flow).orElse(Estimate.outside("nothing heats it in summer")),
                flow(gain.winter()), atPeak(), dew());
    }

    private Estimate<Flow> flow(HeatGain.Flows flows) {
        OptionalDouble before = flows.mean(bare);
        OptionalDouble after = flows.mean(stacks);
        return before.isPresent() && after.isPresent()
                ? Estimate.within(new Flow(before.getAsDouble(), after.getAsDouble(), panel.area(),
                        Math.max(flows.error(bare), flows.error(stacks))))
                : Estimate.outside(TOO_DEEP);
    }

    /** The metal at its peak, the air inside as hot as in a closed vehicle; a gap too deep counts as open air. */
    private List<Heated> atPeak() {
        Stack full = stacks.get(0);
        HeatPath path = gain.path(full);
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

    private Estimate<Dew> dew() {
        if (!vehicle.livedIn()) {
            return Estimate.outside("nobody lives in it, so the air inside is as dry as the air outside");
        }
        if (!gain.told()) {
            return Estimate.outside("the dew point lies outside the range of the formula");
        }
        Optional<Wet> before = gain.wet(bare);
        Optional<Wet> after = gain.wet(stacks);
        return before.isPresent() && after.isPresent()
                ? Estimate.within(new Dew(vehicle.dewPoint(), before.get(), after.get(), faces(stacks.get(0))))
                : Estimate.outside(TOO_DEEP);
    }

    private List<Face> faces(Stack stack) {
        HeatPath path = gain.path(stack);
        HeatFlow flow = gain.winter().of(stack).orElseThrow();
        return IntStream.range(0, path.names().size()).mapToObj(i -> new Face(path.names().get(i),
                flow.faces().get(i + 1), flow.faces().get(i + 1) - vehicle.dewPoint(), path.reached(i))).toList();
    }
}
