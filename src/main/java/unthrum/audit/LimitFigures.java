package unthrum.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.material.Material;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reasoning.engine.Judgement;

/** The two numbers of a broken limit: what the material has, and what was asked for. */
final class LimitFigures {
    private LimitFigures() {
    }

    /** What the material has of a bounded quantity, and the bound; none for a trait that it lacks. */
    static List<Figure> of(Bound bound, Material m, List<Judgement> by) {
        return bound.dimension() == Dimension.NUMBER ? List.of()
                : Stream.concat(has(bound, m).stream(), Stream.of(bound(by))).toList();
    }

    private static Optional<Figure> has(Bound bound, Material m) {
        return Optional.ofNullable(switch (bound) {
            case LAYER_THICKNESS -> of("thickness", m.thickness());
            case SERVICE_TEMPERATURE -> of("bears", m.serviceTo());
            case SERVICE_COLD -> of("bears cold down to", m.serviceFrom());
            case HEAVY_ENOUGH, LIGHT_ENOUGH -> of("weighs", m.surfaceDensity());
            case BURN_RATE -> m.burnRate().map(r -> of("burns", r)).orElse(null);
            default -> null;
        });
    }

    private static Figure of(String name, Quantity value) {
        return new Figure(name, value.si(), value.dimension());
    }

    /** The tightest of some limits of one kind. */
    static Figure bound(List<Judgement> limits) {
        boolean least = switch (((Limit) limits.get(0).conclusion()).bound()) {
            case SERVICE_TEMPERATURE, HEAVY_ENOUGH -> true;
            default -> false;
        };
        Comparator<Limit> order = Comparator.comparingDouble(Limit::value);
        Limit tightest = limits.stream().map(j -> (Limit) j.conclusion()).min(least ? order.reversed() : order)
                .orElseThrow();
        return new Figure("limit", tightest.value(), tightest.bound().dimension());
    }
}
