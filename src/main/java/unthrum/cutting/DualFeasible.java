package unthrum.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A dual feasible function on lengths 0..C: lengths that fit side by side into C have function values that fit side by
 * side into its capacity. The products of two such functions, one across and one along, add up to at most the product
 * of their capacities on any one sheet. Fekete and Schepers, Math. Program. 91 (2001) and Math. Oper. Res. 29 (2004);
 * Carlier, Clautiaux and Moukrim, Comput. Oper. Res. 34 (2007); Boschetti and Mingozzi, 4OR 1 (2003).
 *
 * @param length   C
 * @param form     which function
 * @param k        its parameter
 * @param capacity the function's value for C
 */
record DualFeasible(int length, Form form, int k, long capacity) {

    /** Parameters beyond this many are thinned out, to keep the bound quick. */
    private static final int MOST_PARAMETERS = 60;
    private static final int MOST_MULTIPLES = 12;

    enum Form { PLAIN, MULTIPLE, LARGE_ONLY, ROUNDED }

    /** The functions worth trying when these lengths occur. */
    static List<DualFeasible> family(int length, int[] lengths) {
        List<DualFeasible> all = new ArrayList<>();
        all.add(new DualFeasible(length, Form.PLAIN, 0, length));
        for (int k = 1; k <= MOST_MULTIPLES; k++) {
            all.add(new DualFeasible(length, Form.MULTIPLE, k, (long) length * k));
        }
        TreeSet<Integer> parameters = new TreeSet<>();
        for (int l : lengths) {
            parameters.add(l);
            parameters.add(l + 1);
            parameters.add(length - l);
            parameters.add(length - l + 1);
        }
        parameters.add(length / 2);
        parameters.removeIf(k -> k < 1 || 2 * k > length);
        List<Integer> sorted = List.copyOf(parameters);
        int stride = 1 + sorted.size() / MOST_PARAMETERS;
        for (int i = sorted.size() - 1; i >= 0; i -= stride) {
            int k = sorted.get(i);
            all.add(new DualFeasible(length, Form.LARGE_ONLY, k, length));
            all.add(new DualFeasible(length, Form.ROUNDED, k, 2L * (length / k)));
        }
        return all;
    }

    long of(int x) {
        return switch (form) {
            case PLAIN -> x;
            case MULTIPLE -> multiple(x);
            case LARGE_ONLY -> x > length - k ? length : x >= k ? x : 0;
            case ROUNDED -> 2 * x > length ? 2L * (length / k - (length - x) / k)
                : 2 * x == length ? length / k : 2L * (x / k);
        };
    }

    /** Fekete and Schepers' u: k+1 equal parts count k at the boundary between them, the parts reached elsewhere. */
    private long multiple(int x) {
        long parts = (long) (k + 1) * x;
        return parts % length == 0 ? (long) x * k : parts / length * length;
    }
}
