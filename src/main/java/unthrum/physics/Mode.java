package unthrum.physics;

/**
 * One way a bay can ring.
 *
 * @param frequency Hz
 * @param bendingShare share of the elastic energy that is bending, (f_bend/f)², 0 to 1: all that a damping sheet can
 *     work on; the rest is stretching of the curved skin
 * @param lengthHalfWaves m, half-waves along the bay's length; of the strongest part where shapes mix
 * @param widthHalfWaves n, half-waves along the bay's width
 */
public record Mode(double frequency, double bendingShare, int lengthHalfWaves, int widthHalfWaves) {}
