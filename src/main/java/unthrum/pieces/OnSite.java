package unthrum.pieces;

import unthrum.facts.Place;

/**
 * What must be cut clear on the vehicle, since the survey gives no place for it.
 *
 * @param count how many there are
 * @param clear the diameter to cut clear, m; NaN for a cover of unknown size
 */
public record OnSite(Place place, int count, double clear, Clearing.Way way) {
}
