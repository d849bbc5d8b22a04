package unthrum.reasoning.engine;

import java.util.List;
import unthrum.facts.Conclusion;
import unthrum.knowledge.Standing;

/** A conclusion with every reason that holds it up. */
public record Judgement(Conclusion conclusion, List<Reason> reasons) {

    /** The standing of its strongest reason. */
    public Standing standing() {
        return reasons.stream().map(r -> r.rule().standing()).min(Standing::compareTo).orElseThrow();
    }

    /** Whether every one of its reasons rests on something assumed. */
    public boolean restsOnAssumption() {
        return reasons.stream().allMatch(Reason::restsOnAssumption);
    }
}
