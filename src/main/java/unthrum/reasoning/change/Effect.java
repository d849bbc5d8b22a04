package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.material.Layer;
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
        List<Spot> come = new ArrayList<>(after.spots());
        come.removeAll(before.spots());
        List<Spot> gone = new ArrayList<>(before.spots());
        gone.removeAll(after.spots());
        withoutRenumbered(come, gone);
        come.stream().map(Gains::new).forEach(effects::add);
        gone.stream().map(Loses::new).forEach(effects::add);
        return List.copyOf(effects);
    }

    /** Where a hole is struck off the list those after it move up: the same hole under another number is no effect. */
    private static void withoutRenumbered(List<Spot> come, List<Spot> gone) {
        for (Spot spot : List.copyOf(come)) {
            Optional<Spot> same = gone.stream().filter(s -> spot.layer() == Layer.SEAL && s.layer() == Layer.SEAL
                    && kind(s).equals(kind(spot))).findFirst();
            if (same.isPresent()) {
                come.remove(spot);
                gone.remove(same.get());
            }
        }
    }

    private static String kind(Spot hole) {
        return hole.place().part().replaceAll(" \\d+$", "");
    }
}
