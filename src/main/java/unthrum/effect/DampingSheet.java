package unthrum.effect;

import unthrum.derive.MetalSheet;
import unthrum.facts.Panel;
import unthrum.material.Material;
import unthrum.material.Material.DampingData;
import unthrum.physics.CoveredMode;
import unthrum.physics.Damping;
import unthrum.physics.DampingLayer;
import unthrum.physics.Nomogram;
import unthrum.physics.Sheet;
import unthrum.physics.Viscoelastic;

/** A damping material of the catalogue on a skin, its core as it is at a temperature and a frequency. */
public final class DampingSheet {

    private final Material material;
    private final double facingDensity;
    private final Nomogram nomogram;

    /** @param facingDensity kg/m³ */
    public DampingSheet(Material material, double facingDensity) {
        this.material = material;
        this.facingDensity = facingDensity;
        DampingData data = material.damping().orElseThrow();
        this.nomogram = new Nomogram(
                new Nomogram.Shift(data.shift().c1().si(), data.shift().c2().si(), data.shift().at().si()),
                data.at().si(), data.points().stream().map(p -> new Nomogram.Point(p.temperature().si(),
                        new Viscoelastic(p.shearModulus().si(), p.lossFactor().si()))).toList());
    }

    public Material material() {
        return material;
    }

    double facingDensity() {
        return facingDensity;
    }

    /** Mass per area, kg/m². */
    double mass() {
        return material.surfaceDensity().si();
    }

    /** The core at a temperature (°C) and a frequency (Hz); beyond the data the nearest point. */
    public Viscoelastic core(double celsius, double frequency) {
        return nomogram.at(celsius, frequency);
    }

    /** The layer on a bare skin. */
    DampingLayer on(Sheet skin) {
        double facing = material.damping().orElseThrow().facing().si();
        double thickness = material.thickness().si() - facing;
        return facing == 0 ? new DampingLayer.Free(skin, thickness)
                : DampingLayer.constrained(skin, thickness, new Sheet(
                        material.damping().orElseThrow().facingModulus().si(), CoveredMode.FACING_POISSON, facingDensity, facing));
    }

    /** The skin covered all over, at a temperature (°C), bending in waves that the bare skin has at a frequency (Hz). */
    public Damping.Composite on(Panel panel, double celsius, double frequency) {
        Sheet skin = MetalSheet.of(panel);
        return Damping.covered(skin, on(skin), core(celsius, frequency),
                Damping.waveNumberSquared(skin.skin(), frequency));
    }
}
