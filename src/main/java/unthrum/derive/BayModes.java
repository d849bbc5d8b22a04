package unthrum.derive;

import java.util.Optional;
import unthrum.facts.Place;
import unthrum.physics.Band;
import unthrum.physics.Bay;
import unthrum.physics.Estimate;
import unthrum.physics.Ringing;

/**
 * The shape of a bay and what it may ring at, or why that cannot be told.
 *
 * @param ringing the bay by itself, as read
 * @param told lowest to highest first frequency, of the bay or of the beaded panel that it is part of, whichever is
 *     lower, with the errors of reading, edges and formula
 * @param whole the beaded panel that the bay is part of
 */
public record BayModes(Place place, Bay shape, Estimate<Ringing> ringing, Estimate<Band> told,
                       Optional<BeadedWhole> whole) {
}
