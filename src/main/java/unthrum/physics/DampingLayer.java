package unthrum.physics;

/** A damping layer on a skin, by what it adds to a mode's bending. */
public sealed interface DampingLayer {

    /** The layer's part of the mode's bending energy over that of the bare bay, complex. */
    Complex added(CoveredMode mode, Viscoelastic core);

    /**
     * A soft core under a stiff facing: the core is sheared as the skin bends.
     *
     * @param coupling K d²/D: K = K₁K₃/(K₁ + K₃) of the stretching stiffnesses E H/(1 − ν²) of skin and facing, d the
     *     distance of their middles, D of the skin
     * @param facing the facing's own D over the skin's
     * @param slackness 1/(H₂ K), of the core's thickness, 1/N
     */
    record Constrained(double coupling, double facing, double slackness) implements DampingLayer {

        @Override
        public Complex added(CoveredMode mode, Viscoelastic core) {
            double x = core.shearModulus() * slackness;
            Complex sheared = mode.sheared(new Complex(x, x * core.lossFactor()));
            return new Complex(coupling * sheared.re() + facing * mode.energy(), coupling * sheared.im());
        }
    }

    /** A layer without a facing: it is stretched as the skin bends (Oberst). */
    record Free(Sheet skin, double thickness) implements DampingLayer {

        @Override
        public Complex added(CoveredMode mode, Viscoelastic core) {
            Damping.Composite whole = Damping.free(skin, core.youngsModulus(), core.lossFactor(), thickness);
            double stiffer = whole.flexuralRigidity() / skin.flexuralRigidity();
            return new Complex(stiffer - 1, stiffer * whole.lossFactor()).times(mode.energy());
        }
    }

    static DampingLayer constrained(Sheet skin, double coreThickness, Sheet facing) {
        double k1 = skin.planeModulus() * skin.thickness();
        double k3 = facing.planeModulus() * facing.thickness();
        double k = k1 * k3 / (k1 + k3);
        double d = coreThickness + (skin.thickness() + facing.thickness()) / 2;
        return new Constrained(k * d * d / skin.flexuralRigidity(),
                facing.flexuralRigidity() / skin.flexuralRigidity(), 1 / (coreThickness * k));
    }
}
