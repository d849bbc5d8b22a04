package unthrum.reasoning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import unthrum.facts.Conclusion;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Judgement;

/**
 * Keeps what the search came to on one panel by all that it read: the panel is tried in a hundred ways, and most of
 * them leave the wants, the limits and the metal as they are.
 */
final class SearchMemory {

    /** A limit of mere preference is weighed otherwise than the same limit of a higher standing. */
    private record Bound(Conclusion limit, Standing standing) {
    }

    private record Wanted(Want want, double weight) {
    }

    private record Read(List<Wanted> wants, List<Bound> limits, List<Conclusion> ties, List<Object> metal) {
    }

    private final Map<Read, Found> known = new HashMap<>();
    private String panel = "";

    /** @param metal what the search reads of the panel's facts */
    Found of(Case tried, List<WeighedWant> wants, List<Object> metal, Supplier<LayupSearch> search) {
        if (!tried.panel().equals(panel)) {
            known.clear();
            panel = tried.panel();
        }
        Read read = new Read(wants.stream().filter(w -> w.stands() && w.layer() != Layer.SEAL)
                .map(w -> new Wanted(w.want(), w.weight())).toList(),
                tried.all(Limit.class).stream().map(j -> new Bound(j.conclusion(), j.standing())).toList(),
                tried.judgements().stream().map(Judgement::conclusion)
                        .filter(c -> c instanceof Pairing || c instanceof Veto).toList(), metal);
        Found before = known.get(read);
        if (before != null) {
            return before.because(reason -> limit(tried, reason.conclusion()));
        }
        Found found = Found.of(search.get());
        known.put(read, found);
        return found;
    }

    private static Judgement limit(Case tried, Conclusion limit) {
        return tried.judgements().stream().filter(j -> j.conclusion().equals(limit)).findFirst().orElseThrow();
    }
}
