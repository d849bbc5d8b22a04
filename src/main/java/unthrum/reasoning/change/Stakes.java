package unthrum.reasoning.change;

import java.util.Collection;
import java.util.Comparator;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Limit;
import unthrum.knowledge.Standing;
import unthrum.reasoning.Closing;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;

/**
 * What hangs on an unknown fact: how far apart the ways lie in which it may turn out.
 *
 * @param danger  whether a caution or a rule of safety speaks in one way and not in another
 * @param layers  whether a verdict or a layer differs
 * @param gain    how far apart the gains lie, as a share of what the bare vehicle gives off, weighed by the aims
 * @param mass    in kg
 * @param price   in the catalogue's currency
 */
public record Stakes(boolean danger, boolean layers, double gain, double mass, double price) {

    /** The weightiest first: danger, then what the panel gets, then what the client hears, bears and pays. */
    public static final Comparator<Stakes> WEIGHTIEST = Comparator.comparing((Stakes s) -> !s.danger)
            .thenComparing(s -> !s.layers).thenComparingDouble(s -> -s.gain).thenComparingDouble(s -> -s.mass)
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

    /** Of the layers and of the holes that are closed. */
    private static double gain(PanelAdvice advice) {
        double layers = advice.layup().isEmpty() ? 0 : advice.laid().gain();
        return advice.verdict() == Verdict.HOLD ? layers
                : layers + advice.closings().stream().mapToDouble(Closing::gain).sum();
    }
}
