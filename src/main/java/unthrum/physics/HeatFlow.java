package unthrum.physics;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Steady heat through a layup from the outside inward: the flow and the temperature at every face.
 *
 * @param flow       from the outside inward, W/m²; negative in winter
 * @param resistance R of all layers and both surfaces, m²K/W
 * @param faces      temperatures in °C: outer face, then every interface, last the inner face
 */
public record HeatFlow(double flow, double resistance, List<Double> faces) {
    /** Most passes in which gap resistances and temperatures settle together, and what change of R ends them. */
    private static final int PASSES = 20;
    private static final double SETTLED = 1e-10;

    public HeatFlow {
        faces = List.copyOf(faces);
    }

    /** The hotter face of a layer counted from the outside, °C, to hold against the limit of its material. */
    public double peak(int layer) {
        return Math.max(faces.get(layer), faces.get(layer + 1));
    }

    /**
     * Solves the layers in series (ISO 6946), with gap resistances at the temperatures that they bring about.
     *
     * @param outside      °C, in sun the sol-air temperature
     * @param inside       °C
     * @param outerSurface resistance, m²K/W
     * @param innerSurface resistance, m²K/W
     * @return empty where a gap is deeper than the formulas hold
     */
    public static Optional<HeatFlow> through(List<? extends HeatLayer> layers, HeatDirection direction,
            double outside, double inside, double outerSurface, double innerSurface) {
        Bounds.celsius("outside", outside);
        Bounds.celsius("inside", inside);
        Bounds.notNegative("inner surface resistance", innerSurface);
        Bounds.notNegative("outer surface resistance", outerSurface);
        for (HeatLayer layer : layers) {
            if (layer instanceof HeatLayer.AirGap gap && !gap.inRange()) {
                return Optional.empty();
            }
        }
        double[] faces = new double[layers.size() + 1];
        Arrays.fill(faces, (outside + inside) / 2);
        double[] resistances = new double[layers.size()];
        double steady = outerSurface + innerSurface + solids(layers, direction, resistances);
        double total = steady;
        double last;
        int pass = 0;
        do {
            last = total;
            total = Bounds.positive("resistance", steady + gaps(layers, direction, faces, resistances));
            spread(faces, resistances, outside, outerSurface, (outside - inside) / total);
        } while (Math.abs(total - last) > SETTLED && ++pass < PASSES);
        return Optional.of(new HeatFlow((outside - inside) / total, total, boxed(faces)));
    }

    /** Sets the resistance of each layer but the gaps; their sum. */
    private static double solids(List<? extends HeatLayer> layers, HeatDirection direction, double[] resistances) {
        double sum = 0;
        for (int i = 0; i < resistances.length; i++) {
            if (!(layers.get(i) instanceof HeatLayer.AirGap)) {
                resistances[i] = layers.get(i).resistance(direction, 0, 0);
                sum += resistances[i];
            }
        }
        return sum;
    }

    /** Sets the resistance of each gap to that at its temperatures; their sum. */
    private static double gaps(List<? extends HeatLayer> layers, HeatDirection direction, double[] faces,
            double[] resistances) {
        double sum = 0;
        for (int i = 0; i < resistances.length; i++) {
            if (layers.get(i) instanceof HeatLayer.AirGap gap) {
                double mean = (faces[i] + faces[i + 1]) / 2;
                resistances[i] = gap.resistance(direction, mean, Math.abs(faces[i] - faces[i + 1]));
                sum += resistances[i];
            }
        }
        return sum;
    }

    private static List<Double> boxed(double[] faces) {
        Double[] boxed = new Double[faces.length];
        for (int i = 0; i < faces.length; i++) {
            boxed[i] = faces[i];
        }
        return List.of(boxed);
    }

    private static void spread(
            double[] faces, double[] resistances, double outside, double outerSurface, double flow) {
        faces[0] = outside - flow * outerSurface;
        for (int i = 0; i < resistances.length; i++) {
            faces[i + 1] = faces[i] - flow * resistances[i];
        }
    }
}
