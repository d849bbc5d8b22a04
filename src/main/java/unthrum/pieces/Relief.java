package unthrum.pieces;

import java.util.Optional;

/**
 * Cuts into the two long sides of a piece that let it lie down on metal that bulges both ways. Laid along its middle
 * line, a flat piece has too much material at its edges: at a distance s from that line the share K·s²/2, with K the
 * product of the two curvatures (C. F. Gauss, Disquisitiones generales circa superficies curvas, 1827, on geodesic
 * strips). Good where s is below half of the smaller radius. The edges lap there, or a wedge is taken out.
 *
 * @param aSide how many cuts each long side gets, evenly spaced
 * @param depth of each cut, mm
 * @param lap   how far the edges of a cut lie over each other at the rim, mm
 */
public record Relief(int aSide, int depth, int lap) {

    /** A shallower cut is not worth making, mm: the rim is pressed down. Common practice, no source. */
    static final int LEAST = 20;

    /**
     * What a sheet can take.
     *
     * @param ruck share by which its edge can be squeezed before it rucks
     * @param lap  the most that the edges of one cut may lap, mm
     */
    record Bearing(double ruck, double lap) {
    }

    /** @param curvature the product of the panel's two curvatures, 1/mm² */
    static Optional<Relief> of(Box piece, double curvature, Bearing bearing) {
        double half = Math.min(piece.length(), piece.width()) / 2.0;
        double squeeze = curvature * half * half / 2;
        if (squeeze <= bearing.ruck()) {
            return Optional.empty();
        }
        double depth = half - Math.sqrt(2 * bearing.ruck() / curvature);
        double surplus = squeeze * Math.max(piece.length(), piece.width());
        int aSide = (int) Math.ceil(surplus / bearing.lap());
        return depth < LEAST ? Optional.empty()
                : Optional.of(new Relief(aSide, (int) Math.ceil(depth), (int) Math.ceil(surplus / aSide)));
    }

    /**
     * The product of the two curvatures of a panel whose middle stands so far above its edges, 1/mm²; lengths in mm.
     */
    static double curvature(double length, double width, double rise) {
        return 1 / (radius(length, rise) * radius(width, rise));
    }

    /** Of the circle over a chord with a rise; infinite of a flat one. */
    private static double radius(double chord, double rise) {
        return rise == 0 ? Double.POSITIVE_INFINITY : (chord * chord / 4 + rise * rise) / (2 * rise);
    }
}
