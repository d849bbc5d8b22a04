package unthrum.derive;

import unthrum.physics.Band;
import unthrum.physics.Bay;
import unthrum.physics.Estimate;
import unthrum.physics.Ringing;

/**
 * A panel with pressed beads, or the part of one between its closed ribs, moving as a whole.
 *
 * @param region what moves together, without its beads
 * @param ringing on hinged, sliding edges as soft as the readings and all that the survey leaves open allow, and on
 *     fixed ones as stiff
 * @param told the range with the formula's error
 */
public record BeadedWhole(Bay region, Estimate<Ringing> ringing, Estimate<Band> told) {
}
