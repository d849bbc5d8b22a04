package unthrum.physics;

/**
 * A bending skin, a layer of foam stuck to it and a bending sheet stuck on that, in a field of sound: solved wave by
 * wave and angle by angle, with nothing of {@link DoubleLeaf} in it. Plates after Kirchhoff with structural loss;
 * closed-cell foam as an elastic layer with its own mass and shear; open-cell foam by Biot's two waves across it (frame
 * and air, bonded to both plates, so that both move with them there). Sources: Allard and Atalla, Propagation of Sound
 * in Porous Media, chapters 6 and 11; Fahy and Gardonio. Angles up to 80.1°, the field of {@link MassLaw}: which field a room
 * has is in the error of single leaves. Common practice: shear only where the foam shears between plates that move alike.
 */
final class TransferMatrix {

    private static final double DENSITY = 1.21;
    private static final double SPEED = 343;
    private static final double STEEPEST = Math.toRadians(80.1);
    private static final int ANGLES = 16;
    /** Static pressure; air in fine pores moves isothermally. */
    private static final double PRESSURE = 101_325;

    record Plate(double mass, double rigidity, double lossFactor) {
    }

    /** @param flowResistivity N·s/m⁴, nought for closed cells */
    record Foam(double depth, double modulus, double lossFactor, double density, double flowResistivity) {
    }

    private record Complex(double re, double im) {
        static Complex of(double re) {
            return new Complex(re, 0);
        }

        Complex plus(Complex o) {
            return new Complex(re + o.re, im + o.im);
        }

        Complex minus(Complex o) {
            return new Complex(re - o.re, im - o.im);
        }

        Complex times(Complex o) {
            return new Complex(re * o.re - im * o.im, re * o.im + im * o.re);
        }

        Complex times(double o) {
            return new Complex(re * o, im * o);
        }

        Complex over(Complex o) {
            double square = o.re * o.re + o.im * o.im;
            return new Complex((re * o.re + im * o.im) / square, (im * o.re - re * o.im) / square);
        }

        Complex root() {
            double size = Math.sqrt(Math.hypot(re, im));
            double angle = Math.atan2(im, re) / 2;
            return new Complex(size * Math.cos(angle), size * Math.sin(angle));
        }

        Complex tangent() {
            double sine = Math.sin(2 * re);
            double cosine = Math.cos(2 * re);
            double below = cosine + Math.cosh(2 * im);
            return new Complex(sine / below, Math.sinh(2 * im) / below);
        }

        double square() {
            return re * re + im * im;
        }
    }

    /** Stress at a face for each metre that both faces move together, and for each that they part. */
    private record Layer(Complex together, Complex apart) {
    }

    private TransferMatrix() {
    }

    /** Share of the power that passes in a third octave. */
    static double passed(Plate skin, Foam foam, Plate barrier, ThirdOctave band) {
        double passed = 0;
        for (int i = 0; i < 5; i++) {
            double frequency = band.lowerEdge() * Math.pow(band.upperEdge() / band.lowerEdge(), (i + 0.5) / 5);
            passed += field(skin, foam, barrier, 2 * Math.PI * frequency) / 5;
        }
        return passed;
    }

    private static double field(Plate skin, Foam foam, Plate barrier, double omega) {
        double passed = 0;
        double weight = 0;
        for (int i = 0; i < ANGLES; i++) {
            double angle = STEEPEST * (i + 0.5) / ANGLES;
            double share = Math.sin(angle) * Math.cos(angle);
            passed += share * plane(skin, foam, barrier, omega, angle);
            weight += share;
        }
        return passed / weight;
    }

    /** Two equations of motion, for the displacements w₁ and w₂ of the plates under a wave of unit pressure. */
    private static double plane(Plate skin, Foam foam, Plate barrier, double omega, double angle) {
        double along = omega / SPEED * Math.sin(angle);
        Complex air = new Complex(0, omega * DENSITY * SPEED / Math.cos(angle));
        Layer layer = foam.flowResistivity() > 0 ? porous(foam, omega) : elastic(foam, omega, along);
        Complex sum = layer.apart().plus(layer.together()).times(0.5);
        Complex difference = layer.apart().minus(layer.together()).times(0.5);
        Complex one = plate(skin, omega, along).plus(air).plus(sum);
        Complex two = plate(barrier, omega, along).plus(air).plus(sum);
        Complex second = difference.times(2).over(one.times(two).minus(difference.times(difference)));
        return second.times(air).square();
    }

    private static Complex plate(Plate plate, double omega, double along) {
        double bending = plate.rigidity() * Math.pow(along, 4);
        return new Complex(bending - plate.mass() * omega * omega, bending * plate.lossFactor());
    }

    /** K k cot(kh) apart and −K k tan(kh) together, k² = (ρω² − G k_x²)/K, G = K/2 for Poisson's ratio nought. */
    private static Layer elastic(Foam foam, double omega, double along) {
        Complex modulus = new Complex(foam.modulus(), foam.modulus() * foam.lossFactor());
        Complex number = Complex.of(foam.density() * omega * omega).minus(modulus.times(along * along / 2))
                .over(modulus).root();
        Complex tangent = number.times(foam.depth() / 2).tangent();
        Complex stiff = modulus.times(number);
        return new Layer(stiff.times(tangent).times(-1), stiff.over(tangent));
    }

    /** Biot (1956) across the layer, porosity 0.98 and tortuosity 1.1; all of the air isothermal. */
    private static Layer porous(Foam foam, double omega) {
        double porosity = 0.98;
        double solid = 1 - porosity;
        Complex coupling = new Complex(-porosity * DENSITY * 0.1,
                porosity * porosity * foam.flowResistivity() / omega);
        Complex r11 = Complex.of(foam.density()).minus(coupling);
        Complex r22 = Complex.of(porosity * DENSITY).minus(coupling);
        Complex p = new Complex(foam.modulus() + solid * solid / porosity * PRESSURE, foam.modulus() * foam.lossFactor());
        Complex q = Complex.of(solid * PRESSURE);
        Complex r = Complex.of(porosity * PRESSURE);
        Complex a = p.times(r).minus(q.times(q));
        Complex b = p.times(r22).plus(r.times(r11)).minus(q.times(coupling).times(2));
        Complex c = r11.times(r22).minus(coupling.times(coupling));
        Complex root = b.times(b).minus(a.times(c).times(4)).root();
        Complex slow = b.minus(root).over(a.times(2));
        Complex fast = b.plus(root).over(a.times(2));
        Complex m1 = ratio(slow, p, q, r11, coupling);
        Complex m2 = ratio(fast, p, q, r11, coupling);
        Complex share1 = m2.minus(Complex.of(1)).over(m2.minus(m1));
        Complex share2 = Complex.of(1).minus(m1).over(m2.minus(m1));
        Layer one = wave(slow.root().times(omega), share1, p.plus(q).plus(q.plus(r).times(m1)), foam.depth());
        Layer two = wave(fast.root().times(omega), share2, p.plus(q).plus(q.plus(r).times(m2)), foam.depth());
        return new Layer(one.together().plus(two.together()), one.apart().plus(two.apart()));
    }

    /** Movement of the air over that of the frame in a wave with k² = s ω². */
    private static Complex ratio(Complex s, Complex p, Complex q, Complex r11, Complex r12) {
        return p.times(s).minus(r11).over(r12.minus(q.times(s)));
    }

    private static Layer wave(Complex number, Complex share, Complex modulus, double depth) {
        Complex tangent = number.times(depth / 2).tangent();
        Complex stiff = modulus.times(number).times(share);
        return new Layer(stiff.times(tangent).times(-1), stiff.over(tangent));
    }
}
