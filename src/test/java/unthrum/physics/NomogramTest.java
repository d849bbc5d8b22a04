package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A damping material at its own frequency and temperature")
class NomogramTest {

    private static final Nomogram.Shift SHIFT = new Nomogram.Shift(11.39, 199.5, 14.7);

    /** How many kelvin warmer do what a tenth of the frequency does. */
    private static double kelvinPerDecade(double celsius) {
        return 1 / (SHIFT.decades(celsius - 0.5) - SHIFT.decades(celsius + 0.5));
    }

    private static Nomogram.Point point(double celsius, double modulus, double loss) {
        return new Nomogram.Point(celsius, new Viscoelastic(modulus, loss));
    }

    private static final Nomogram SOFT = new Nomogram(SHIFT, 200,
            List.of(point(0, 1e7, 0.8), point(20, 1e6, 1.0), point(60, 1e5, 0.4)));

    @ParameterizedTest
    @CsvSource({"0,1e7,0.8", "20,1e6,1.0", "60,1e5,0.4"})
    @DisplayName("is what the data say at the data's frequency")
    void points(double celsius, double modulus, double loss) {
        assertThat(SOFT.at(celsius, 200).shearModulus()).isCloseTo(modulus, withinPercentage(1e-6));
        assertThat(SOFT.at(celsius, 200).lossFactor()).isCloseTo(loss, within(1e-9));
    }

    @Test
    @DisplayName("is its nearest point beyond the data: no one measured more")
    void beyond() {
        assertThat(SOFT.at(-60, 200)).isEqualTo(new Viscoelastic(1e7, 0.8));
        assertThat(SOFT.at(20, 1e-9)).isEqualTo(new Viscoelastic(1e5, 0.4));
        assertThat(SOFT.at(-300, 5000)).isEqualTo(new Viscoelastic(1e7, 0.8));
    }

    /**
     * Ver and Beranek, Noise and Vibration Control Engineering, 2nd edition 2006, table 14.1: where the loss factor of
     * seven soft damping sheets peaks at 10, 100 and 1000 Hz, in the mean -1.4, 14.7 and 33.9 degC; and of three stiff
     * ones 10, 26.7 and 51.7 degC.
     */
    @ParameterizedTest
    @CsvSource({"11.39,199.5,14.7,-1.4,33.9", "5.02,100.6,26.7,10,51.7"})
    @DisplayName("has its peak where the handbook's sheets have it at 10, 100 and 1000 Hz")
    void peaks(double c1, double c2, double peak, double slow, double fast) {
        Nomogram sheet = new Nomogram(new Nomogram.Shift(c1, c2, peak), 100,
                List.of(point(peak - 40, 1e7, 0.1), point(peak, 1e6, 1), point(peak + 40, 1e5, 0.1)));
        assertThat(hottest(sheet, 10)).isCloseTo(slow, within(0.3));
        assertThat(hottest(sheet, 1000)).isCloseTo(fast, within(0.3));
    }

    private static double hottest(Nomogram sheet, double hertz) {
        return IntStream.rangeClosed(-400, 900).mapToObj(t -> t / 10.0)
                .max((a, b) -> Double.compare(sheet.at(a, hertz).lossFactor(), sheet.at(b, hertz).lossFactor()))
                .orElseThrow();
    }

    /** The same material made of springs and dashpots, 17 to the decade-wide spectrum, and shifted by its own law. */
    @ParameterizedTest
    @CsvSource({"5,50", "20,50", "20,1000", "35,400", "45,100"})
    @DisplayName("is that of a generalised Maxwell body that was only measured at one frequency")
    void maxwell(double celsius, double hertz) {
        List<Nomogram.Point> measured = IntStream.rangeClosed(-40, 100)
                .mapToObj(t -> new Nomogram.Point(t, body(t, 200))).toList();
        Viscoelastic told = new Nomogram(SHIFT, 200, measured).at(celsius, hertz);
        Viscoelastic true_ = body(celsius, hertz);
        assertThat(told.shearModulus()).isCloseTo(true_.shearModulus(), withinPercentage(0.5));
        assertThat(told.lossFactor()).isCloseTo(true_.lossFactor(), within(0.005));
    }

    private static Viscoelastic body(double celsius, double hertz) {
        double slower = Math.pow(10, -11.39 * (celsius - 14.7) / (199.5 + celsius - 14.7));
        double real = 2e5;
        double lost = 0;
        for (int i = -8; i <= 8; i++) {
            double turn = 2 * Math.PI * hertz * slower * Math.pow(10, i / 2.0 - 3);
            double spring = 2e6 * Math.exp(-i / 4.0);
            real += spring * turn * turn / (1 + turn * turn);
            lost += spring * turn / (1 + turn * turn);
        }
        return new Viscoelastic(real, lost / real);
    }

    /** The same table: 14 to 25 K a decade; over all 17 materials 8 to 28. */
    @Test
    @DisplayName("moves by as many kelvin a decade as the handbook's sheets do, in the workshop and in the sun")
    void kelvin() {
        assertThat(kelvinPerDecade(20)).isBetween(14.0, 25.0);
        assertThat(kelvinPerDecade(60)).isBetween(8.0, 28.0);
    }
}
