package unthrum.facts;

import java.util.Set;
import unthrum.survey.NoiseSource;
import unthrum.survey.Traffic;
import unthrum.survey.Wetness;

/** What goes on around the panel. */
public record Setting(
        String panel,
        Wetness wet,
        boolean driesOut,
        Traffic traffic,
        boolean nearEar,
        NoiseSource nearNoise,
        Set<String> assumed) implements Fact {
}
