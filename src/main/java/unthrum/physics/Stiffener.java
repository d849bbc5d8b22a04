package unthrum.physics;

/**
 * A rib or bead that divides a panel.
 *
 * @param kind how it is made
 * @param width w across it, m
 * @param height of the rib's section, or depth of the bead, m
 * @param thickness of the rib's own sheet, m; a bead is pressed from the skin itself
 */
public record Stiffener(Kind kind, double width, double height, double thickness) {

    /** A closed rib resists bending and twisting; a bead only bending. */
    public enum Kind {
        BOX_SECTION,
        PRESSED_BEAD
    }

    public static Stiffener boxSection(double width, double height, double thickness) {
        return new Stiffener(Kind.BOX_SECTION, width, height, thickness);
    }

    public static Stiffener bead(double width, double depth) {
        return new Stiffener(Kind.PRESSED_BEAD, width, depth, 0);
    }

    /**
     * Second moment of area with a strip of skin that works along, about their common neutral axis, m⁴: a top and two
     * webs, or a bead in the shape of a raised cosine (mean height d/2, mean square 3d²/8).
     */
    double secondMoment(double skinThickness, double strip) {
        double area = skinThickness * strip;
        double first;
        double second;
        if (kind == Kind.BOX_SECTION) {
            area += thickness * (width + 2 * height);
            first = thickness * (width * height + height * height);
            second = thickness * (width * height * height + 2 * Math.pow(height, 3) / 3);
        } else {
            first = skinThickness * width * height / 2;
            second = skinThickness * width * height * height * 3 / 8 + strip * Math.pow(skinThickness, 3) / 12;
        }
        return second - first * first / area;
    }

    /** What it adds per length, kg/m, in the skin's density; the bead's stretch of sheet is left out. */
    double lineDensity(double density) {
        return kind == Kind.BOX_SECTION ? density * thickness * (width + 2 * height) : 0;
    }
}
