package unthrum.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What formulas say less what was measured, dB, beside the uncertainty that they state. */
final class WallErrors {

    record Error(String of, double error, double stated) {
        boolean within() {
            return Math.abs(error) <= stated;
        }
    }

    private final List<Error> all = new ArrayList<>();

    void add(String of, double computed, double measured, double stated) {
        all.add(new Error(of, computed - measured, stated));
    }

    /** Only those of one kind. */
    WallErrors of(String kind) {
        WallErrors some = new WallErrors();
        all.stream().filter(e -> e.of().equals(kind)).forEach(some.all::add);
        return some;
    }

    int count() {
        return all.size();
    }

    double mean() {
        return all.stream().mapToDouble(Error::error).average().orElseThrow();
    }

    double rootMeanSquare() {
        return Math.sqrt(all.stream().mapToDouble(e -> e.error() * e.error()).average().orElseThrow());
    }

    double shareWithin() {
        return all.stream().filter(Error::within).count() / (double) all.size();
    }

    /** Root mean square of what is stated. */
    double stated() {
        return Math.sqrt(all.stream().mapToDouble(e -> e.stated() * e.stated()).average().orElseThrow());
    }

    double shareWithin(double bound) {
        return all.stream().filter(e -> Math.abs(e.error()) <= bound).count() / (double) all.size();
    }

    @Override
    public String toString() {
        Map<String, List<Error>> groups = new TreeMap<>();
        all.forEach(e -> groups.computeIfAbsent(e.of(), o -> new ArrayList<>()).add(e));
        StringBuilder said = new StringBuilder("%d values, mean %.2f, rms %.2f, stated %.2f, within %.3f".formatted(
                count(), mean(), rootMeanSquare(), stated(), shareWithin()));
        groups.forEach((of, errors) -> said.append("%n%s (%.1f): %s".formatted(of, errors.get(0).stated(),
                errors.stream().map(Error::error).sorted().map("%.1f"::formatted).toList())));
        return said.toString();
    }

    /** Transmission loss of an octave: the mean of what its three thirds let pass. */
    static double octave(Partition partition, double centre, double past) {
        int middle = ThirdOctave.of(centre).ordinal();
        double passed = 0;
        for (int i = middle - 1; i <= middle + 1; i++) {
            passed += partition.passed(ThirdOctave.values()[i]) / 3;
        }
        return CompositeLoss.loss(passed + past);
    }
}
