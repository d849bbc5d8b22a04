package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import unthrum.facts.Panel;
import unthrum.material.Layer;
import unthrum.material.Material;

/**
 * A share of a panel's area with the same layers on it, from the metal inward. Smaller layers are taken to lie within
 * larger ones. A heat shield hangs ventilated on the other side and is in no stack.
 */
record Stack(double share, List<Material> layers) {

    /** A strip narrower than this is no strip but a rounding of areas. */
    private static final double LEAST = 1e-6;

    /** The fullest first, the barest last; the shares add up to one. */
    static List<Stack> of(Panel panel, Layup layup) {
        List<Laid> inside = layup.layers().stream().filter(l -> l.layer() != Layer.HEAT_SHIELD).toList();
        TreeSet<Double> shares = new TreeSet<>();
        shares.add(1.0);
        inside.forEach(l -> shares.add(share(l, panel)));
        List<Stack> stacks = new ArrayList<>();
        double before = 0;
        for (double share : shares) {
            if (share - before > LEAST) {
                double reach = share;
                stacks.add(new Stack(share - before, inside.stream().filter(l -> share(l, panel) >= reach)
                        .map(Laid::material).toList()));
                before = share;
            }
        }
        return stacks;
    }

    private static double share(Laid laid, Panel panel) {
        return Math.min(laid.area() / panel.area(), 1);
    }

    double thickness() {
        return layers.stream().mapToDouble(m -> m.thickness().si()).sum();
    }

    double mass() {
        return mass(layers);
    }

    static double mass(List<Material> layers) {
        return layers.stream().mapToDouble(m -> m.surfaceDensity().si()).sum();
    }

    boolean has(Layer layer) {
        return layers.stream().anyMatch(m -> m.layer() == layer);
    }
}
