package unthrum.reasoning.change;

import java.util.Comparator;
import java.util.List;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.reasoning.Considered;
import unthrum.reasoning.Scored;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Silence;

/** Why a panel does not get a layer at a place: the first cause that holds, from the rules to the choice. */
public sealed interface WhyNot {

    Layer layer();

    Place place();

    /**
     * No rule asks for it.
     *
     * @param silent each rule that could have asked with what kept it silent, the nearest miss first
     */
    record NobodyAsks(Layer layer, Place place, List<Silence> silent) implements WhyNot {
    }

    /** Every reason for it is outvoted. */
    record Outvoted(Layer layer, Place place, WeighedWant want) implements WhyNot {
    }

    /** The whole panel waits. */
    record Waits(Layer layer, Place place, List<Judgement> holds) implements WhyNot {
    }

    /** Every material that could serve breaks a limit by itself. */
    record Rejected(Layer layer, Place place, List<Considered> candidates) implements WhyNot {

        /** The candidate that fewest limits reject. */
        public Considered nearest() {
            return candidates.stream().min(Comparator.comparingInt((Considered c) -> c.rejectedBy().size())
                    .thenComparing(c -> c.material().material())).orElseThrow();
        }
    }

    /**
     * A material is within the limits, but it lies only beside a companion for which there is no room or no material.
     *
     * @param broken the pairings of the layer and the limits on the whole stack, which together leave no way
     */
    record Alone(Layer layer, Place place, List<Considered> candidates, List<Judgement> broken) implements WhyNot {
    }

    /**
     * It would fit, but another layup is worth more.
     *
     * @param with the best layup with it
     */
    record Outdone(Layer layer, Place place, Scored with, Scored chosen) implements WhyNot {
    }
}
