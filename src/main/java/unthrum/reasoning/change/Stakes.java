package unthrum.reasoning.change;

import java.util.Collection;
import java.util.Comparator;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import unthrum.facts.Bay;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Decoupled;
import unthrum.facts.Leak;
import unthrum.facts.Limit;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.engine.Judgement;

/**
 * What hangs on an unknown fact: how far apart the ways lie in which it may turn out.
 *
 * @param danger  whether a caution or a rule of safety speaks in one way and not in another
 * @param layers  whether a verdict or a layer differs
 * @param decibel the largest difference that a layer makes, as far as it can be computed
 * @param mass    in kg
 * @param price   in the catalogue's currency
 */
public record Stakes(boolean danger, boolean layers, double decibel, double mass, double price) {

    /** The weightiest first: danger, then what the panel gets, then what the client hears, bears and pays. */
    public static final Comparator<Stakes> WEIGHTIEST = Comparator.comparing((Stakes s) -> !s.danger)
            .thenComparing(s -> !s.layers).thenComparingDouble(s -> -s.decibel).thenComparingDouble(s -> -s.mass)
            .thenComparingDouble(s -> -s.price);

    static Stakes between(Collection<PanelAdvice> ways) {
        return new Stakes(ways.stream().map(Stakes::dangers).distinct().count() > 1,
                ways.stream().map(Outcome::of).distinct().count() > 1, spread(ways, Stakes::gain),
                spread(ways, a -> a.layup().mass()), spread(ways, a -> a.layup().price()));
    }

    public boolean isNothing() {
        return !danger && !layers;
    }

    private static double spread(Collection<PanelAdvice> ways, ToDoubleFunction<PanelAdvice> what) {
        double most = ways.stream().mapToDouble(what).max().orElse(0);
        return most - ways.stream().mapToDouble(what).min().orElse(0);
    }

    /** What safety says, values left out: a limit that only moves is no other danger. */
    private static Set<Object> dangers(PanelAdvice advice) {
        return advice.panel().judgements().stream()
                .filter(j -> j.conclusion() instanceof Caution || j.standing() == Standing.SAFETY)
                .map(Judgement::conclusion).map(Stakes::withoutValue).collect(Collectors.toSet());
    }

    private static Object withoutValue(Conclusion conclusion) {
        return conclusion instanceof Limit limit ? new Limit(limit.place(), limit.layer(), limit.bound(), 0)
                : conclusion;
    }

    /** The largest gain in dB that any one layer brings: gains of different layers in different bands do not add up. */
    private static double gain(PanelAdvice advice) {
        return Outcome.of(advice).spots().stream().mapToDouble(spot -> gain(spot, advice)).max().orElse(0);
    }

    private static double gain(Spot spot, PanelAdvice advice) {
        if (spot.layer() == Layer.DAMPING) {
            return advice.panel().facts().all(Bay.class).filter(b -> b.place().equals(spot.place()))
                    .mapToDouble(Bay::gain).filter(Double::isFinite).sum();
        }
        if (spot.layer() == Layer.DECOUPLER) {
            return advice.panel().facts().all(Decoupled.class).mapToDouble(Decoupled::gain).sum();
        }
        return spot.layer() == Layer.SEAL ? advice.panel().facts().all(Leak.class).mapToDouble(Leak::cost).sum() : 0;
    }
}
