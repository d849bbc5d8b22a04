package unthrum.effect;

import java.math.BigDecimal;
import java.util.List;
import unthrum.material.Layer;
import unthrum.material.Material;

/** One layer of a layup: a material and where it lies. */
public record Laid(Material material, List<Patch> patches) {

    public Layer layer() {
        return material.layer();
    }

    /** Covered area in m². */
    public double area() {
        return patches.stream().mapToDouble(Patch::area).sum();
    }

    /** Mass in kg. */
    public double mass() {
        return area() * material.surfaceDensity().si();
    }

    /** Price of the area used, at the pack's price, without offcuts. */
    public double price() {
        BigDecimal pack = material.price().amount();
        return pack.doubleValue() * area() / material.packArea();
    }

    /** Thickness in m that it adds between metal and trim; a heat shield hangs on the other side. */
    public double stackThickness() {
        return layer() == Layer.HEAT_SHIELD ? 0 : material.thickness().si();
    }
}
