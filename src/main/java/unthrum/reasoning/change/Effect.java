package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import unthrum.reasoning.Verdict;

/** One thing that a change does to a panel. */
public sealed interface Effect {

    /** Another verdict. */
    record Becomes(Verdict verdict) implements Effect {
    }

    /** A layer more at a place. */
    record Gains(Spot spot) implements Effect {
    }

    /** A layer less at a place. */
    record Loses(Spot spot) implements Effect {
    }

    /** All that differs, the verdict first. */
    static List<Effect> between(Outcome before, Outcome after) {
        List<Effect> effects = new ArrayList<>();
        if (before.verdict() != after.verdict()) {
            effects.add(new Becomes(after.verdict()));
        }
        after.spots().stream().filter(s -> !before.spots().contains(s)).map(Gains::new).forEach(effects::add);
        before.spots().stream().filter(s -> !after.spots().contains(s)).map(Loses::new).forEach(effects::add);
        return List.copyOf(effects);
    }
}
