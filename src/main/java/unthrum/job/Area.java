package unthrum.job;

import java.util.List;
import java.util.Optional;
import unthrum.survey.Zone;

/** Zones that are worked together. */
public record Area(String area, List<Zone> zones, Optional<Boolean> walkedOn) {

    /** Whether people stand and kneel on it while they work in the others. */
    public boolean isWalkedOn() {
        return walkedOn.orElse(false);
    }
}
