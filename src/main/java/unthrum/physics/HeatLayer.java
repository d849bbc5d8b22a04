package unthrum.physics;

/** One layer that heat must cross. */
public sealed interface HeatLayer {

    /**
     * Thermal resistance, m²K/W.
     *
     * @param direction   of the heat
     * @param meanCelsius mean temperature of the layer, °C
     * @param difference  of temperature across it, K
     */
    double resistance(HeatDirection direction, double meanCelsius, double difference);

    /**
     * Metal, foam, sheet or board: R = d/λ (ISO 6946).
     *
     * @param thickness    m
     * @param conductivity λ, W/(m·K)
     */
    record Solid(double thickness, double conductivity) implements HeatLayer {
        public Solid {
            Bounds.notNegative("thickness", thickness);
            Bounds.positive("conductivity", conductivity);
        }

        @Override
        public double resistance(HeatDirection direction, double meanCelsius, double difference) {
            return thickness / conductivity;
        }
    }

    /** A board, a lining or a carpet that is known by its resistance alone, m²K/W. */
    record Known(double resistance) implements HeatLayer {
        public Known {
            Bounds.notNegative("thermal resistance", resistance);
        }

        @Override
        public double resistance(HeatDirection direction, double meanCelsius, double difference) {
            return resistance;
        }
    }

    /**
     * A closed air gap: R = 1/(h_a + E·4σT³) (ISO 6946, annex D). A bright foil counts only through its emissivity
     * here, that is where it faces the gap and stays clean. Holds up to 0.3 m deep; a ventilated gap is no layer.
     *
     * @param depth m
     */
    record AirGap(double depth, double emissivity1, double emissivity2) implements HeatLayer {
        public AirGap {
            Bounds.positive("depth of the gap", depth);
            Bounds.emissivity(emissivity1);
            Bounds.emissivity(emissivity2);
        }

        /** Whether the formula holds at this depth. */
        public boolean inRange() {
            return depth <= HeatDirection.DEEPEST_GAP;
        }

        @Override
        public double resistance(HeatDirection direction, double meanCelsius, double difference) {
            double radiative = Radiation.exchangeFactor(emissivity1, emissivity2) * Radiation.coefficient(meanCelsius);
            return 1 / (direction.gapConvection(depth, Math.abs(difference)) + radiative);
        }
    }
}
