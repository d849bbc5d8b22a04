package unthrum.derive;

import unthrum.facts.Place;
import unthrum.physics.Bay;
import unthrum.physics.Estimate;
import unthrum.physics.Ringing;

/** The shape of a bay and what it may ring at, or why that cannot be told. */
public record BayModes(Place place, Bay shape, Estimate<Ringing> ringing) {
}
