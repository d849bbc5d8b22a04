package unthrum.physics;

/** What a damping layer makes of a skin, and what that is worth on a whole panel. */
public final class Damping {

    private Damping() {}

    /**
     * A treated skin.
     *
     * @param lossFactor of its bending
     * @param flexuralRigidity real part, N·m
     */
    public record Composite(double lossFactor, double flexuralRigidity) {}

    /**
     * A soft core under a stiff cover (Ross–Kerwin–Ungar): the core is sheared as the skin bends.
     *
     * <p>With K = E H/(1 − ν²) of the skins, d the distance of their middles, B₀ the sum of their own rigidities,
     * Y = K₁K₃d²/[(K₁ + K₃) B₀] and X = G/(H₂k²)(1/K₁ + 1/K₃):
     * B = B₀ [1 + Y Z/(1 + Z)], Z = X(1 + iη). Exact within the theory for hinged edges; on a clamped cantilever
     * it is 7 to 15 % off in loss factor. The core is far softer than the skins. Sources: Kerwin 1959; Nashif, Jones
     * and Henderson, Vibration Damping; from memory.
     *
     * @param waveNumberSquared k², 1/m², see {@link #waveNumberSquared}
     */
    public static Composite constrained(
            Sheet skin, Viscoelastic core, double coreThickness, Sheet cover, double waveNumberSquared) {
        return covered(skin, DampingLayer.constrained(skin, coreThickness, cover), core, waveNumberSquared);
    }

    /** Any layer all over a skin that bends in waves of a square wave number, 1/m². */
    public static Composite covered(Sheet skin, DampingLayer layer, Viscoelastic core, double waveNumberSquared) {
        Complex added = layer.added(CoveredMode.everywhere(1, waveNumberSquared, 1), core);
        return new Composite(added.im() / (1 + added.re()), skin.flexuralRigidity() * (1 + added.re()));
    }

    /**
     * A free layer (Oberst): it is stretched as the skin bends. With e = E₂/E₁ and h = H₂/H₁:
     * D/D₁ = [1 + 2e(2h + 3h² + 2h³) + e²h⁴]/(1 + eh);
     * η = η₂ eh(3 + 6h + 4h² + 2eh³ + e²h⁴)/{(1 + eh)[1 + 2e(2h + 3h² + 2h³) + e²h⁴]}.
     *
     * <p>Within 0.06 % of the full complex section for usual layers (η₂² e small). Moduli of the same kind: with plates
     * E/(1 − ν²). Sources: Oberst 1952, ASTM E756; from memory.
     *
     * @param modulus E₂ (or E₂/(1 − ν²), as the skin's plane modulus is used), Pa
     */
    public static Composite free(Sheet skin, double modulus, double lossFactor, double thickness) {
        double e = modulus / skin.planeModulus();
        double h = thickness / skin.thickness();
        double stiffer = 1 + 2 * e * (2 * h + 3 * h * h + 2 * h * h * h) + e * e * Math.pow(h, 4);
        double stretched = e * h * (3 + 6 * h + 4 * h * h + 2 * e * h * h * h + e * e * Math.pow(h, 4));
        double loss = lossFactor * stretched / ((1 + e * h) * stiffer);
        return new Composite(loss, skin.flexuralRigidity() * stiffer / (1 + e * h));
    }

    /** k² = 2πf √(m''/D), 1/m², of a skin bending at f (Hz); of a curved bay only the bending part of f counts. */
    public static double waveNumberSquared(Skin skin, double bendingFrequency) {
        return 2 * Math.PI * bendingFrequency * Math.sqrt(skin.surfaceDensity() / skin.flexuralRigidity());
    }

    /** k² of a mode: 2πf √(m''/D) with f_bend = f √share. */
    public static double waveNumberSquared(Skin skin, Mode mode) {
        return waveNumberSquared(skin, mode.frequency() * Math.sqrt(mode.bendingShare()));
    }

    /**
     * Loss factor of a mode with part of the bay treated: bare + bending share · covered share · composite, the
     * strain-energy sum of its parts (Ungar and Kerwin 1962; from memory). Never below the bare one, which stands for
     * what seams, edges and air take.
     *
     * @param bendingShare of the mode's energy, see {@link Mode#bendingShare()}
     * @param coveredShare of the bending energy that lies under the layer, see {@link Coverage}
     */
    public static double modalLossFactor(
            double bare, double bendingShare, double coveredShare, double compositeLossFactor) {
        return bare + bendingShare * coveredShare * compositeLossFactor;
    }

    /** By how many dB the level at resonance falls when the loss factor rises: 20 lg(after/before). */
    public static double levelReduction(double lossFactorBefore, double lossFactorAfter) {
        return 20 * Math.log10(lossFactorAfter / lossFactorBefore);
    }
}
