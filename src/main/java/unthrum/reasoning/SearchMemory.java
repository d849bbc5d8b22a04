package unthrum.reasoning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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

    /** What a search came to. */
    record Chosen(Scored best, List<Considered> considered, Optional<Ladder> ladder, Optional<Scored> slight) {

        static Chosen of(LayupSearch search) {
            return new Chosen(search.best(), search.considered(), search.ladder(), search.slight());
        }

        /** The same choice with the reasons that the limits rest on now. */
        private Chosen because(List<Judgement> judgements) {
            Map<Conclusion, Judgement> now = judgements.stream().filter(j -> j.conclusion() instanceof Limit)
                    .collect(Collectors.toMap(Judgement::conclusion, Function.identity()));
            return new Chosen(best, considered.stream().map(c -> new Considered(c.material(), c.rejectedBy().stream()
                    .map(j -> now.get(j.conclusion())).toList(), c.best(), c.chosen())).toList(), ladder, slight);
        }
    }

    private final Map<Read, Chosen> known = new HashMap<>();
    private String panel = "";

    /** @param metal what the search reads of the panel's facts */
    Chosen of(Case tried, List<WeighedWant> wants, List<Object> metal, Supplier<LayupSearch> search) {
        if (!tried.panel().equals(panel)) {
            known.clear();
            panel = tried.panel();
        }
        Read read = new Read(wants.stream().filter(w -> w.stands() && w.layer() != Layer.SEAL)
                .map(w -> new Wanted(w.want(), w.weight())).toList(),
                tried.all(Limit.class).stream().map(j -> new Bound(j.conclusion(), j.standing())).toList(),
                tried.judgements().stream().map(Judgement::conclusion)
                        .filter(c -> c instanceof Pairing || c instanceof Veto).toList(), metal);
        Chosen before = known.get(read);
        if (before != null) {
            return before.because(tried.judgements());
        }
        Chosen chosen = Chosen.of(search.get());
        known.put(read, chosen);
        return chosen;
    }
}
