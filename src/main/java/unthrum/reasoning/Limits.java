package unthrum.reasoning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import unthrum.effect.Layup;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.material.Material.Cell;
import unthrum.reasoning.engine.Judgement;

/** The limits on one panel's layup, and which of them a material or a whole layup breaks. */
public final class Limits {

    /** Sums of thicknesses and masses may miss a bound by rounding alone. */
    private static final double SLACK = 1e-9;

    private final List<Judgement> limits;
    private final List<Judgement> pairings;
    private final double bright;
    private final double thickest;
    private final double heaviest;

    public Limits(Case panel, Knowledge knowledge) {
        this.limits = panel.all(Limit.class).stream().filter(j -> !bindsTheJob((Limit) j.conclusion())).toList();
        this.pairings = panel.all(Pairing.class);
        this.bright = knowledge.number("enough/bright-face");
        this.thickest = least(Bound.STACK_THICKNESS).orElse(Double.POSITIVE_INFINITY);
        this.heaviest = least(Bound.MASS).orElse(Double.POSITIVE_INFINITY);
    }

    /** A mass for the whole vehicle binds the sum over all panels, not one of them. */
    private static boolean bindsTheJob(Limit limit) {
        return limit.place().isVehicle() && limit.bound() == Bound.MASS;
    }

    /** The limits that a material breaks by itself, whatever lies with it. */
    public List<Judgement> brokenBy(Material material) {
        return limits.stream().filter(j -> breaks(material, (Limit) j.conclusion())).toList();
    }

    /** The limits and pairings that a layup breaks as a whole. */
    public List<Judgement> brokenBy(Layup layup) {
        List<Judgement> broken = new ArrayList<>(limits.stream()
                .filter(j -> breaks(layup, (Limit) j.conclusion())).toList());
        broken.addAll(pairings.stream().filter(j -> breaks(layup, (Pairing) j.conclusion())).toList());
        return broken;
    }

    /** Whether the limits bear a stack so thick (m) and so heavy (kg). */
    boolean bear(double thickness, double mass) {
        return thickness <= thickest + SLACK && mass <= heaviest + SLACK;
    }

    /** Whether no pairing is broken. */
    boolean pair(Layup layup) {
        for (Judgement pairing : pairings) {
            if (breaks(layup, (Pairing) pairing.conclusion())) {
                return false;
            }
        }
        return true;
    }

    /** The largest share of a place that a layer may cover there. */
    OptionalDouble coverage(unthrum.material.Layer layer, Place place) {
        return limits.stream().map(j -> (Limit) j.conclusion())
                .filter(l -> l.bound() == Bound.COVERAGE && layer.matches(l.layer()) && place.within(l.place()))
                .mapToDouble(Limit::value).min();
    }

    /** The limits that a layer breaks by covering so large a share of a place. */
    public List<Judgement> brokenByCovering(unthrum.material.Layer layer, Place place, double share) {
        return limits.stream().filter(j -> {
            Limit l = (Limit) j.conclusion();
            return l.bound() == Bound.COVERAGE && layer.matches(l.layer()) && place.within(l.place())
                    && share > l.value();
        }).toList();
    }

    /** The thinnest stack that any limit asks for, in m. */
    OptionalDouble stack() {
        return least(Bound.STACK_THICKNESS);
    }

    private OptionalDouble least(Bound bound) {
        return limits.stream().map(j -> (Limit) j.conclusion()).filter(l -> l.bound() == bound)
                .mapToDouble(Limit::value).min();
    }

    /** The least mass that any limit allows the panel, in kg; infinite when none does. */
    public double mass() {
        return heaviest;
    }

    private boolean breaks(Material m, Limit limit) {
        if (!m.layer().matches(limit.layer())) {
            return false;
        }
        double value = limit.value();
        return switch (limit.bound()) {
            case LAYER_THICKNESS -> m.thickness().si() > value;
            case SERVICE_TEMPERATURE -> m.serviceTo().si() < value;
            case SERVICE_COLD -> m.serviceFrom().si() > value;
            case HEAVY_ENOUGH -> m.surfaceDensity().si() < value;
            case LIGHT_ENOUGH -> m.surfaceDensity().si() > value;
            case BURN_RATE -> m.burnRate().isEmpty() || m.burnRate().get().si() > value;
            case CLOSED_CELL -> m.cell() == Cell.OPEN || m.cell() == Cell.FIBRE;
            case LIFTS_OUT -> !m.removable();
            case NOT_BONDED -> m.bonding().sticks();
            case HELD -> m.bonding() == Bonding.LOOSE;
            case BEARS_WEAR -> !m.bearsWear().orElse(false);
            case PLAIN_FACE -> m.bearsWear().orElse(false);
            case BRIGHT_FACE -> m.emissivity().isEmpty() || m.emissivity().get().si() > bright;
            case STACK_THICKNESS, MASS, COVERAGE -> false;
        };
    }

    private static boolean breaks(Layup layup, Limit limit) {
        return switch (limit.bound()) {
            case STACK_THICKNESS -> layup.thickness() > limit.value() + SLACK;
            case MASS -> layup.mass() > limit.value() + SLACK;
            default -> false;
        };
    }

    private static boolean breaks(Layup layup, Pairing pairing) {
        boolean both = layup.has(pairing.layer()) && layup.has(pairing.other());
        return switch (pairing.tie()) {
            case NEEDS -> layup.has(pairing.layer()) && !layup.has(pairing.other());
            case NEVER_WITH -> both;
        };
    }
}
