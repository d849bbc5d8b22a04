package unthrum.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import unthrum.reasoning.engine.Judgement;

/**
 * One step of a job.
 *
 * @param area     where it is done; absent for the whole vehicle
 * @param tasks    the panels, in the survey's order; none where the vehicle as a whole is meant
 * @param asks     the duties that it meets, each with the one reason that is met here
 * @param cautions the dangers of its panels and of the job that it can run into
 * @param people   how many hands it takes at once
 * @param pauses   what must wait in it or after it
 * @param supplies what its materials ask for
 * @param labour   estimate, in s, added up over the hands
 */
public record Step(StepKind kind, Optional<Area> area, List<Task> tasks, List<Judgement> asks,
                   List<Judgement> cautions, int people, List<Pause> pauses, Supplies supplies, double labour) {

    /** 'wash, overhead'. */
    public String name() {
        return kind.step() + area.map(a -> ", " + a.area()).orElse("");
    }

    /** Whether it is done in the area where people stand and kneel. */
    public boolean isUnderfoot() {
        return area.map(Area::isWalkedOn).orElse(false);
    }

    /** How long it takes until what follows may begin, in s: all hands at work together, then the least waits. */
    double lasts() {
        return labour / people + pauses.stream().mapToDouble(p -> p.least().orElse(0)).sum();
    }

    /** What is used up, beside the layers and the pieces for holes. */
    public List<String> consumables() {
        return Stream.concat(supplies.adhesive(), kind.consumables().stream().flatMap(List::stream)).toList();
    }

    /** The ids of the rules that ask for it. */
    public List<String> rules() {
        return asks.stream().flatMap(a -> a.reasons().stream()).map(r -> r.rule().id()).distinct().sorted().toList();
    }
}
