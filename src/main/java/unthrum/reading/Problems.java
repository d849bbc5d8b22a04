package unthrum.reading;

import java.util.List;
import java.util.stream.Collectors;

/** All the problems of one file, by place. Nothing was read. It carries no stack trace: the fault is in the file. */
public final class Problems extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> all;

    Problems(List<Problem> all) {
        super(null, null, false, false);
        this.all = all.stream().sorted(Problem.BY_PLACE).toList();
    }

    Problems(Problem one) {
        this(List.of(one));
    }

    /** The one problem of something that is no file, such as an option of the command line. */
    public static Problems at(String place, String found, String expected, String remedy) {
        return new Problems(Problem.ofFile(place, found, expected, remedy));
    }

    /** The problems of several such things together. */
    public static Problems of(List<Problem> all) {
        return new Problems(all);
    }

    /** What a check finds wrong with a value that stands in no file. */
    public static <T> List<Problem> in(String place, T value, Check<T> check) {
        Places places = new Places(place);
        places.put("", new Node.Scalar("", false, 0, 0));
        check.check(value, places);
        return List.copyOf(places.problems());
    }

    public List<Problem> all() {
        return all;
    }

    /** One line for each problem. */
    @Override
    public String getMessage() {
        return first(all.size());
    }

    /** The first so many problems, one a line, and a last line that counts the others. */
    public String first(int lines) {
        String shown = all.stream().limit(lines).map(Problem::toString).collect(Collectors.joining("\n"));
        int others = all.size() - lines;
        return others <= 0 ? shown : shown + "\nand " + others + " more like these";
    }
}
