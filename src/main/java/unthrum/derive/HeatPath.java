package unthrum.derive;

import java.util.List;
import java.util.Optional;
import unthrum.knowledge.Knowledge;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;

/**
 * What heat crosses from the outside into the room, layer by layer.
 *
 * @param names  of the layers: 'metal', the materials, 'air gap', and what comes back
 * @param sealed the innermost layer behind which no room air gets, counted from the metal
 */
public record HeatPath(List<String> names, List<HeatLayer> layers, int sealed) {

    /** Nothing where a gap is deeper than the formulas hold. */
    public Optional<HeatFlow> in(Climate climate) {
        return climate.through(layers);
    }

    /** Whether room air reaches the inner face of a layer counted from the metal: taken to be so behind any trim. */
    public boolean reached(int layer) {
        return layer >= sealed;
    }

    /** The coldest face that room air reaches, °C. */
    public double coldest(HeatFlow flow) {
        double coldest = Double.POSITIVE_INFINITY;
        for (int i = sealed; i < layers.size(); i++) {
            coldest = Math.min(coldest, flow.faces().get(i + 1));
        }
        return coldest;
    }

    /**
     * By what share each kind of resistance may be off.
     *
     * @param layer of materials, trim and carpet
     */
    public record Errors(double outerSurface, double innerSurface, double gap, double layer) {

        public static Errors of(Knowledge knowledge) {
            return new Errors(knowledge.number("usual/outer-surface-error"),
                    knowledge.number("usual/inner-surface-error"), knowledge.number("usual/air-gap-error"),
                    knowledge.number("usual/conductivity-error"));
        }
    }

    /** Share by which the flow may be off either way: its resistances in series, each wrong by itself. */
    public double error(Climate climate, HeatFlow flow, Errors errors) {
        double squares = square(errors.outerSurface * climate.outerSurface())
                + square(errors.innerSurface * climate.way().innerSurface());
        double rest = flow.resistance() - climate.outerSurface() - climate.way().innerSurface();
        for (HeatLayer layer : layers) {
            if (!(layer instanceof HeatLayer.AirGap)) {
                double resistance = layer.resistance(climate.way(), climate.inside(), 0);
                squares += square(errors.layer * resistance);
                rest -= resistance;
            }
        }
        return Math.sqrt(squares + square(errors.gap * rest)) / flow.resistance();
    }

    private static double square(double x) {
        return x * x;
    }
}
