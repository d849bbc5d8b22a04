package unthrum.effect;

import java.util.List;
import unthrum.facts.Panel;
import unthrum.material.Material;
import unthrum.material.Material.DampingData;
import unthrum.material.Material.DampingData.Point;
import unthrum.physics.Damping;
import unthrum.physics.Sheet;
import unthrum.physics.Viscoelastic;
import unthrum.derive.MetalSheet;

/** A damping material of the catalogue on a skin, at a temperature and its data's own reference frequency. */
public record DampingSheet(Material material, double facingDensity) {

    /** Poisson's ratio of a metal facing, from memory. */
    private static final double FACING_POISSON = 0.33;

    /** The treated skin at a temperature (°C) for bending at a frequency (Hz); beyond the data the nearest point. */
    public Damping.Composite on(Panel panel, double celsius, double frequency) {
        DampingData data = material.damping().orElseThrow();
        Viscoelastic core = at(data.points(), celsius);
        Sheet skin = MetalSheet.of(panel);
        double thickness = material.thickness().si() - data.facing().si();
        if (data.facing().si() == 0) {
            return Damping.free(skin, core.youngsModulus(), core.lossFactor(), thickness);
        }
        Sheet facing = new Sheet(data.facingModulus().si(), FACING_POISSON, facingDensity, data.facing().si());
        return Damping.constrained(skin, core, thickness, facing, Damping.waveNumberSquared(skin.skin(), frequency));
    }

    private static Viscoelastic at(List<Point> points, double celsius) {
        Point before = points.get(0);
        for (Point after : points) {
            if (after.temperature().si() >= celsius) {
                return between(before, after, celsius);
            }
            before = after;
        }
        return between(before, before, celsius);
    }

    private static Viscoelastic between(Point a, Point b, double celsius) {
        double span = b.temperature().si() - a.temperature().si();
        double t = span == 0 ? 0 : (celsius - a.temperature().si()) / span;
        double modulus = Math.pow(a.shearModulus().si(), 1 - t) * Math.pow(b.shearModulus().si(), t);
        return new Viscoelastic(modulus, a.lossFactor().si() * (1 - t) + b.lossFactor().si() * t);
    }
}
