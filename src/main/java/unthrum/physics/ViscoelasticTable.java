package unthrum.physics;

import java.util.List;

/**
 * A damping material's shear modulus and loss factor over temperature and frequency.
 *
 * <p>Between the table's points the logarithm of the modulus and the loss factor run straight over temperature and
 * over the logarithm of frequency, as both do over short steps on a reduced-frequency nomogram (Jones; ISO 10112, from
 * memory). Outside the table nothing is said.
 *
 * @param temperatures K, rising, at least one
 * @param frequencies Hz, rising, at least one
 * @param points one row for each temperature, in it one value for each frequency
 */
public record ViscoelasticTable(
        List<Double> temperatures, List<Double> frequencies, List<List<Viscoelastic>> points) {

    public ViscoelasticTable {
        temperatures = List.copyOf(temperatures);
        frequencies = List.copyOf(frequencies);
        points = points.stream().map(List::copyOf).toList();
        int columns = frequencies.size();
        if (!rising(temperatures) || !rising(frequencies) || points.size() != temperatures.size()
                || points.stream().anyMatch(row -> row.size() != columns)) {
            throw new IllegalArgumentException("a table needs rising axes and a value at each of their crossings");
        }
    }

    /** The material at a temperature (K) and frequency (Hz), or why the table cannot tell. */
    public Estimate<Viscoelastic> at(double temperature, double frequency) {
        if (outside(temperatures, temperature)) {
            return Estimate.outside(String.format("no damping data at %.0f °C", temperature - 273.15));
        }
        if (outside(frequencies, frequency)) {
            return Estimate.outside(String.format("no damping data at %.0f Hz", frequency));
        }
        int row = interval(temperatures, temperature);
        int column = interval(frequencies, frequency);
        double t = position(temperatures, row, temperature);
        List<Double> octaves = frequencies.stream().map(Math::log).toList();
        double f = position(octaves, column, Math.log(frequency));
        Viscoelastic cold = between(point(row, column), point(row, column + 1), f);
        Viscoelastic warm = between(point(row + 1, column), point(row + 1, column + 1), f);
        return Estimate.within(between(cold, warm, t));
    }

    private Viscoelastic point(int row, int column) {
        List<Viscoelastic> values = points.get(Math.min(row, points.size() - 1));
        return values.get(Math.min(column, values.size() - 1));
    }

    private static Viscoelastic between(Viscoelastic from, Viscoelastic to, double t) {
        double modulus = Math.pow(from.shearModulus(), 1 - t) * Math.pow(to.shearModulus(), t);
        return new Viscoelastic(modulus, from.lossFactor() * (1 - t) + to.lossFactor() * t);
    }

    private static boolean outside(List<Double> axis, double value) {
        return !(value >= axis.get(0) && value <= axis.get(axis.size() - 1));
    }

    private static int interval(List<Double> axis, double value) {
        int i = 0;
        while (i < axis.size() - 2 && value > axis.get(i + 1)) {
            i++;
        }
        return i;
    }

    private static double position(List<Double> axis, int i, double value) {
        return i + 1 >= axis.size() ? 0 : (value - axis.get(i)) / (axis.get(i + 1) - axis.get(i));
    }

    private static boolean rising(List<Double> axis) {
        for (int i = 1; i < axis.size(); i++) {
            if (!(axis.get(i) > axis.get(i - 1))) {
                return false;
            }
        }
        return !axis.isEmpty();
    }
}
