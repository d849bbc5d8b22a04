package unthrum.job;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A wait.
 *
 * @param least  in s; absent where nobody can say
 * @param most   in s; absent where one number is given
 * @param sources keys of the sources where the numbers come from
 */
public record Pause(String until, OptionalDouble least, OptionalDouble most, List<String> sources) {
}
