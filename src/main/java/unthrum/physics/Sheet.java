package unthrum.physics;

/**
 * A flat piece of one elastic material, such as the metal skin of a panel.
 *
 * @param youngsModulus Young's modulus, Pa
 * @param poissonRatio Poisson's ratio, 0 to below 0.5
 * @param density kg/m³
 * @param thickness m
 */
public record Sheet(double youngsModulus, double poissonRatio, double density, double thickness) {

    /** Poisson's ratio of steel and aluminium, rounded; from memory of common engineering tables. */
    private static final double METAL_POISSON_RATIO = 0.3;

    public Sheet {
        if (!(youngsModulus > 0 && density > 0 && thickness > 0 && poissonRatio >= 0 && poissonRatio < 0.5)) {
            throw new IllegalArgumentException("a sheet needs positive stiffness, density and thickness");
        }
    }

    /** Cold-rolled steel: E = 205 GPa, 7850 kg/m³ (EN 1993-1-1 has 210 GPa; tables give 200 to 210). From memory. */
    public static Sheet steel(double thickness) {
        return new Sheet(205e9, METAL_POISSON_RATIO, 7850, thickness);
    }

    /** Aluminium sheet: E = 70 GPa, 2700 kg/m³ (EN 1999-1-1). From memory. */
    public static Sheet aluminium(double thickness) {
        return new Sheet(70e9, METAL_POISSON_RATIO, 2700, thickness);
    }

    /** D = E h³ / (12 (1 − ν²)), N·m. Thin plates only. Leissa, NASA SP-160. */
    public double flexuralRigidity() {
        return planeModulus() * Math.pow(thickness, 3) / 12;
    }

    /** E / (1 − ν²), Pa: the modulus of a plate that bends one way and is held the other. */
    public double planeModulus() {
        return youngsModulus / (1 - poissonRatio * poissonRatio);
    }

    /** Mass per area, kg/m². */
    public double surfaceDensity() {
        return density * thickness;
    }

    /** This sheet as a skin that vibrates alone. */
    public Skin skin() {
        return new Skin(flexuralRigidity(), youngsModulus * thickness, poissonRatio, surfaceDensity(), thickness);
    }
}
