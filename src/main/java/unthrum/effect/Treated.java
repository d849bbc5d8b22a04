package unthrum.effect;

import java.util.Set;
import unthrum.facts.Place;
import unthrum.derive.PanelFacts;

/**
 * A panel as it will be, or as it was found after the job.
 *
 * @param closed the openings that are closed by then; all others are as the survey found them
 */
public record Treated(PanelFacts facts, Layup layup, Set<Place> closed) {
}
