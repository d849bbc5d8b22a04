package unthrum.effect;

import java.util.Optional;
import unthrum.derive.HeardSound;
import unthrum.survey.Aim;

/**
 * One way on which what an aim is about gets to the people.
 *
 * @param weight what it counts among all that the client wants, 0 to 1
 * @param sound  for the two ways of sound
 */
record Way(Aim aim, Kind kind, double weight, Optional<HeardSound> sound) {

    enum Kind { SHAKEN, AIRBORNE, HEAT_IN, HEAT_OUT, WETNESS }
}
