package unthrum.physics;

/**
 * What ties two leaves together hard, so that the second moves with the first there whatever lies between them.
 *
 * <p>Source: Sharp (1973), as recalled from Fahy and Gardonio and from Bies, Hansen and Howard: along lines b apart a
 * double leaf gains at most 10 lg(b f_c) + 20 lg[m₁/(m₁+m₂)] − 18 dB on the mass law of both leaves, on points e apart
 * 20 lg(e f_c) + 20 lg[m₁/(m₁+m₂)] − 45 dB, f_c and m₂ of the leaf that is driven. A leaf that is limp enough is
 * hardly driven at all.
 *
 * @param lines  length of the ties for each area, m/m²
 * @param points number of the ties for each area, 1/m²
 */
public record Bridges(double lines, double points) {

    public static final Bridges NONE = new Bridges(0, 0);

    /** 18 dB. */
    private static final double LINE = 63;
    /** A point that moves with v radiates as 8c²/π³f_c² of piston; at 343 m/s that is Sharp's 45 dB. */
    private static final double POINT = 8 / (Math.PI * Math.PI * Math.PI);

    public Bridges {
        Bounds.notNegative("lines", lines);
        Bounds.notNegative("points", points);
    }

    /** Area of a piston that would radiate as much as the driven leaf does by its ties, for each area of it. */
    public double piston(Leaf driven) {
        double critical = driven.criticalFrequency();
        double speed = driven.air().soundSpeed();
        return LINE * lines / critical + POINT * points * (speed / critical) * (speed / critical);
    }

    /** What the ties pass, as a share of what both leaves would pass if they were stuck together. */
    public double passed(Leaf skin, Leaf driven) {
        double lighter = 1 + driven.surfaceMass() / skin.surfaceMass();
        return piston(driven) * lighter * lighter;
    }
}
