package unthrum.reasoning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import unthrum.effect.Layup;
import unthrum.material.Material;
import unthrum.reasoning.engine.Judgement;

/**
 * What the search for a layup came to: the best at once, the rest worked out when somebody asks. Not for several
 * threads at once.
 */
final class Found {

    private final LayupSearch search;
    private final Layup laid;
    private final UnaryOperator<Judgement> now;
    private List<Considered> considered;

    private Found(LayupSearch search, Layup laid, UnaryOperator<Judgement> now) {
        this.search = search;
        this.laid = laid;
        this.now = now;
    }

    static Found of(LayupSearch search) {
        return new Found(search, search.best().layup(), UnaryOperator.identity());
    }

    /** The same with the reasons that the limits rest on now. */
    Found because(UnaryOperator<Judgement> reasons) {
        return new Found(search, laid, reasons);
    }

    /** The same where another layup is laid. */
    Found laying(Layup other) {
        return new Found(search, other, now);
    }

    Scored best() {
        return search.best();
    }

    /** What is laid, with its figures. */
    Scored laid() {
        return search.scored(laid);
    }

    Optional<Scored> slight() {
        return search.slight();
    }

    Optional<Ladder> ladder() {
        return search.ladder();
    }

    /** Every material of a wanted layer that limits keep out, with these limits. */
    Map<Material, List<Judgement>> rejected() {
        Map<Material, List<Judgement>> rejected = new LinkedHashMap<>();
        search.rejected().forEach((material, by) -> rejected.put(material, by.stream().map(now).toList()));
        return rejected;
    }

    List<Considered> considered() {
        if (considered == null) {
            considered = search.considered().stream().map(c -> new Considered(c.material(),
                    c.rejectedBy().stream().map(now).toList(), c.best(),
                    laid.materials().contains(c.material()))).toList();
        }
        return considered;
    }

    /** By what it came to, whichever search did. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Found found && laid.equals(found.laid) && best().equals(found.best())
                && considered().equals(found.considered()) && ladder().equals(found.ladder())
                && slight().equals(found.slight());
    }

    @Override
    public int hashCode() {
        return Objects.hash(laid, best());
    }
}
