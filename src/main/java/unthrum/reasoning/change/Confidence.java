package unthrum.reasoning.change;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.material.Material;
import unthrum.reading.Quantity;
import unthrum.effect.Laid;
import unthrum.reasoning.PanelAdvice;
import unthrum.derive.Assumed;

/**
 * What a verdict rests on and how near it is to another.
 *
 * @param assumptions what was assumed and matters: rules looked at it, or another value of it would change something
 * @param typical     the chosen materials, whose data are typical until a data sheet says better
 * @param nearest     the change of a measured number that comes nearest, by how far two honest measurements may differ
 */
public record Confidence(List<Assumed> assumptions, List<Material> typical, Optional<Change> nearest) {

    static final Comparator<Change> NEAREST = Comparator.comparingDouble(Confidence::errors);

    /** @param changes the changes of one fact that were found on the panel */
    public static Confidence of(PanelAdvice advice, List<Change> changes) {
        return new Confidence(assumptions(advice, changes), advice.layup().layers().stream().map(Laid::material).toList(),
                changes.stream().filter(c -> c.turns().size() == 1).filter(c -> c.turns().get(0).lever().isScale())
                        .min(NEAREST));
    }

    private static List<Assumed> assumptions(PanelAdvice advice, List<Change> changes) {
        Stream<Assumed> turning = changes.stream().flatMap(c -> c.turns().stream()).map(Change.Turn::lever)
                .filter(lever -> !lever.stated()).map(lever -> advice.panel().facts().assumptions().get(lever.key()))
                .filter(Objects::nonNull);
        return Stream.concat(advice.restsOn().stream(), turning).distinct().toList();
    }

    public boolean isMeasured() {
        return assumptions.isEmpty();
    }

    /** How many times the difference of two honest measurements a change is away. */
    static double errors(Change change) {
        Change.Turn turn = change.turns().get(0);
        double errs = turn.lever().how().errs().map(Quantity::si).orElse(Double.MIN_NORMAL);
        return Measured.distance(turn).orElse(Double.POSITIVE_INFINITY) / errs;
    }
}
