package unthrum.knowledge;

import java.util.List;

/** A published source that rules and numbers cite by its key. */
public record Source(String source, String title, String holds) {

    /** The two marks that need no entry: nobody published it, or nobody looked it up. */
    public static final List<String> MARKS = List.of("common-practice", "from-memory");

    record File(List<Source> sources) {
    }
}
