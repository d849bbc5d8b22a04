package unthrum.reasoning.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import unthrum.facts.Conclusion;
import unthrum.knowledge.Standing;

/** A conclusion with every reason that holds it up. */
public record Judgement(Conclusion conclusion, List<Reason> reasons) {

    /** The standing of its strongest reason. */
    public Standing standing() {
        return reasons.stream().map(r -> r.rule().standing()).min(Standing::compareTo).orElseThrow();
    }

    /** The same conclusion with the reasons that a test admits; none where it admits no reason. */
    public Optional<Judgement> restingOn(Predicate<Reason> admitted) {
        List<Reason> left = reasons.stream().filter(admitted).toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new Judgement(conclusion, left));
    }

    /** Whether every one of its reasons rests on something assumed. */
    public boolean restsOnAssumption() {
        return reasons.stream().allMatch(Reason::restsOnAssumption);
    }
}
