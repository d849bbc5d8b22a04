package unthrum.derive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.facts.Fact;
import unthrum.facts.Place;

/**
 * All facts of one panel, and the assumptions they rest on by the survey's key. Under the empty name: the vehicle.
 *
 * @param modes how each bay may ring, kept from the derivation since it is costly to compute
 */
public record PanelFacts(String panel, List<Fact> facts, Map<String, Assumed> assumptions, List<BayModes> modes) {

    /** How the bay at a place may ring. */
    public Optional<BayModes> modes(Place bay) {
        return modes.stream().filter(m -> m.place().equals(bay)).findFirst();
    }

    /** The facts of one kind. */
    public <F extends Fact> Stream<F> all(Class<F> kind) {
        return facts.stream().filter(kind::isInstance).map(kind::cast);
    }

    /** The same panel as whoever reads but these kinds of fact sees it. */
    public PanelFacts only(Set<Class<? extends Fact>> kinds) {
        return new PanelFacts(panel, facts.stream().filter(f -> kinds.contains(f.getClass())).toList(), Map.of(), modes);
    }

    /** The one fact of a kind that every panel has. */
    public <F extends Fact> F the(Class<F> kind) {
        return all(kind).findFirst().orElseThrow();
    }
}
