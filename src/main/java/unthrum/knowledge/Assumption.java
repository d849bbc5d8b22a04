package unthrum.knowledge;

import java.util.List;
import java.util.Optional;
import unthrum.survey.Zone;

/**
 * What is taken when the survey does not say.
 *
 * @param fact  the survey's own key
 * @param zones where it holds; everywhere when absent
 */
public record Assumption(String fact, Optional<List<Zone>> zones, String value, String because, String source) {

    record File(List<Assumption> assumptions) {
    }

    boolean fits(String key, Zone zone) {
        return fact.equals(key) && zones.map(z -> z.contains(zone)).orElse(true);
    }
}
