package unthrum.physics;

/** A complex number: a stiffness whose imaginary part takes energy away. */
record Complex(double re, double im) {

    static final Complex ONE = new Complex(1, 0);

    Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    Complex plus(double real) {
        return new Complex(re + real, im);
    }

    Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    Complex times(double real) {
        return new Complex(re * real, im * real);
    }

    Complex over(Complex other) {
        double square = other.re * other.re + other.im * other.im;
        return new Complex((re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
    }

    /** The root in the right half plane. */
    Complex root() {
        double size = Math.hypot(re, im);
        return new Complex(Math.sqrt((size + re) / 2), Math.copySign(Math.sqrt((size - re) / 2), im));
    }

    Complex tangent() {
        double below = Math.cos(2 * re) + Math.cosh(2 * im);
        return new Complex(Math.sin(2 * re) / below, Math.sinh(2 * im) / below);
    }

    /** Its size, squared. */
    double square() {
        return re * re + im * im;
    }
}
