package unthrum.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How the height of a panel's section runs along it, stretch by stretch.
 *
 * @param stretches from one end to the other, or from the middle to one end
 * @param half whether they begin at the middle of a panel that is alike on both sides of it
 */
record Course(List<Stretch> stretches, boolean half) {

    /** Gauss's points over 0 to 1: exact for the products of cubics, and enough where the height changes. */
    private static final double[][] EXACT = {
        {0.069431844202974, 0.330009478207572, 0.669990521792428, 0.930568155797026},
        {0.173927422568727, 0.326072577431273, 0.326072577431273, 0.173927422568727}};
    private static final double[][] ENOUGH = {
        {0.112701665379258, 0.5, 0.887298334620742}, {0.277777777777778, 0.444444444444444, 0.277777777777778}};

    /** Where motions are one cubic along, from one place to another, m. */
    record Stretch(double from, double to, List<Station> stations) {

        double length() {
            return to - from;
        }
    }

    /**
     * Points of a stretch at which the section is the same.
     *
     * @param height of the section, m
     * @param slope by which the height grows along
     * @param at the points, shares of the stretch
     * @param weights of the points, together the stretch's share
     */
    record Station(double height, double slope, double[] at, double[] weights) {}

    static Stretch even(double from, double to, double height) {
        return new Stretch(from, to, List.of(new Station(height, 0, EXACT[0], EXACT[1])));
    }

    /** @param height and slope at a place along, m */
    static Stretch varied(double from, double to, DoubleUnaryOperator height, DoubleUnaryOperator slope) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < ENOUGH[0].length; i++) {
            double x = from + ENOUGH[0][i] * (to - from);
            stations.add(new Station(height.applyAsDouble(x), slope.applyAsDouble(x), new double[] {ENOUGH[0][i]},
                    new double[] {ENOUGH[1][i]}));
        }
        return new Stretch(from, to, stations);
    }
}
