package unthrum.effect;

import unthrum.facts.Place;

/** A piece of a layer on a panel or a bay: the share of the place it covers and its area in m². */
public record Patch(Place place, double coverage, double area) {
}
