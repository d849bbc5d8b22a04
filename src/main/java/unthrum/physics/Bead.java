package unthrum.physics;

/**
 * A bead pressed into a panel.
 *
 * @param middle from the panel's edge beside it, m
 * @param width foot to foot, m
 * @param height over the sheet, m
 * @param flank in plan, beside a flat top, m; 0 for a rounded bead, half a sine
 */
public record Bead(double middle, double width, double height, double flank) {

    public Bead {
        if (!(width > 0 && height > 0 && flank >= 0 && flank <= width / 2)) {
            throw new IllegalArgumentException("a bead has a width and a height, and flanks that fit into it");
        }
    }

    double start() {
        return middle - width / 2;
    }

    double end() {
        return middle + width / 2;
    }
}
