package unthrum.physics;

/**
 * A metal section across a panel, made of straight strips that run along it.
 *
 * @param at where the strips meet, from one edge to the other, m
 * @param height of each such line, as a share of the height that the section has at a place along
 */
record Profile(double[] at, double[] height) {

    /** Strips count as alike up to this, m: two bays of one width. */
    private static final double ROUNDING = 1e-9;

    /** One strip: its width in plan, the share of the height at its near line and how that grows across. */
    record Strip(double width, double near, double climb) {

        StripStrains at(Course.Station station, double t) {
            return new StripStrains(station.slope() * (near + climb * width * t), station.height() * climb, width, t);
        }
    }

    int lines() {
        return at.length;
    }

    Strip strip(int i) {
        double width = Math.round((at[i + 1] - at[i]) / ROUNDING) * ROUNDING;
        return new Strip(width, height[i], (height[i + 1] - height[i]) / width);
    }
}
