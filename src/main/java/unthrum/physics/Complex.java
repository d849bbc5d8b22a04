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
}
