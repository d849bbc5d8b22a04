package unthrum.reading;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

    /**
     * So many problems, one a line and by place, and a last line that counts the others. The first of each kind is
     * always shown, though the lines become more by it: what is only counted is like one that is shown.
     */
    public String first(int lines) {
        BitSet shown = new BitSet(all.size());
        Set<String> kinds = new HashSet<>();
        for (int i = 0; i < all.size(); i++) {
            shown.set(i, kinds.add(all.get(i).kind()));
        }
        while (shown.cardinality() < Math.min(lines, all.size())) {
            shown.set(shown.nextClearBit(0));
        }
        int others = all.size() - shown.cardinality();
        String text = shown.stream().mapToObj(i -> all.get(i).toString()).collect(Collectors.joining("\n"));
        return others == 0 ? text : text + "\nand " + others + " more like these";
    }
}
