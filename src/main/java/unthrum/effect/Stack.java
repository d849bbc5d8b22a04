package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
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
        List<Material> inside = new ArrayList<>();
        double[] reaches = new double[layup.layers().size()];
        for (Laid laid : layup.layers()) {
            if (laid.layer() != Layer.HEAT_SHIELD) {
                reaches[inside.size()] = share(laid, panel);
                inside.add(laid.material());
            }
        }
        List<Stack> stacks = new ArrayList<>();
        double before = 0;
        double reach = 0;
        while (reach < 1) {
            reach = next(reaches, inside.size(), reach);
            if (reach - before > LEAST) {
                stacks.add(new Stack(reach - before, reaching(reach, reaches, inside)));
                before = reach;
            }
        }
        return stacks;
    }

    /** The least share beyond a share; one where there is none. */
    private static double next(double[] reaches, int count, double share) {
        double next = 1;
        for (int i = 0; i < count; i++) {
            next = reaches[i] > share ? Math.min(next, reaches[i]) : next;
        }
        return next;
    }

    private static List<Material> reaching(double share, double[] reaches, List<Material> inside) {
        List<Material> reaching = new ArrayList<>(inside.size());
        for (int i = 0; i < inside.size(); i++) {
            if (reaches[i] >= share) {
                reaching.add(inside.get(i));
            }
        }
        return reaching;
    }

    private static double share(Laid laid, Panel panel) {
        return Math.min(laid.area() / panel.area(), 1);
    }

    static double mass(List<Material> layers) {
        return layers.stream().mapToDouble(m -> m.surfaceDensity().si()).sum();
    }

    boolean has(Layer layer) {
        return layers.stream().anyMatch(m -> m.layer() == layer);
    }
}
