package unthrum.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where in a layup room air would leave water: the margin of every face over the dew point there, K; below nought it
 * gets wet. Faces are counted as in {@link HeatFlow#faces()}, the outer face first.
 *
 * @param margins temperature less dew point, K; the outer face, which the weather meets, counts as dry in both checks
 */
public record Condensation(List<Double> margins) {
    public Condensation {
        margins = List.copyOf(margins);
    }

    /** The face nearest to getting wet, or wettest. */
    public int worstFace() {
        int worst = 1;
        for (int i = 2; i < margins.size(); i++) {
            if (margins.get(i) < margins.get(worst)) {
                worst = i;
            }
        }
        return worst;
    }

    /** Its margin, K. */
    public double worstMargin() {
        return margins.get(worstFace());
    }

    /** Whether any face gets wet. */
    public boolean wet() {
        return worstMargin() < 0;
    }

    /**
     * Room air reaches every face inside the skin: open-cell foam, loose batts, lifted edges. The harsh and usual case
     * for anything but full-face bonded closed cells.
     */
    public static Condensation wherever(HeatFlow heat, double dewPoint) {
        List<Double> margins = new ArrayList<>(heat.faces().size());
        margins.add(Double.POSITIVE_INFINITY);
        for (double face : heat.faces().subList(1, heat.faces().size())) {
            margins.add(face - dewPoint);
        }
        return new Condensation(margins);
    }

    /**
     * Vapour has to pass the layers one by one, edges sealed: vapour pressure falls in proportion to the equivalent
     * air layer s_d = μd of each (the profile of ISO 13788, Glaser), and is held against saturation at every face.
     * The profile says where water would form first, not how much.
     *
     * @param airLayers s_d of each layer, m, from the outside; a metal skin 1500 m or more
     * @param outside   vapour pressure, Pa
     * @param inside    vapour pressure, Pa
     * @return empty where a face or its dew point lies outside the range of the Magnus formula
     */
    public static Optional<Condensation> throughLayers(
            HeatFlow heat, double[] airLayers, double outside, double inside) {
        int layers = heat.faces().size() - 1;
        if (airLayers.length != layers) {
            throw new IllegalArgumentException(
                    airLayers.length + " equivalent air layers, expected one for each of " + layers + " layers");
        }
        double total = 0;
        for (double airLayer : airLayers) {
            total += Bounds.notNegative("equivalent air layer", airLayer);
        }
        Bounds.positive("sum of the equivalent air layers", total);
        List<Double> margins = new ArrayList<>(layers + 1);
        margins.add(Double.POSITIVE_INFINITY);
        double passed = 0;
        for (int i = 1; i <= layers; i++) {
            passed += airLayers[i - 1];
            OptionalDouble dewPoint = Moisture.dewPointOf(outside + (inside - outside) * passed / total);
            if (dewPoint.isEmpty()) {
                return Optional.empty();
            }
            margins.add(heat.faces().get(i) - dewPoint.getAsDouble());
        }
        return Optional.of(new Condensation(margins));
    }
}
