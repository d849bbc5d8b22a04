package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.facts.Bay;
import unthrum.physics.BandModes;
import unthrum.physics.Sheet;
import unthrum.physics.ThirdOctave;

@DisplayName("What a bay gives off over the whole band")
class BayPowerTest {

    private static final Workbench BENCH = Workbench.with("body: van, drive: diesel, use: daily", "road drumming",
            panel("flat", "900 mm, 600 mm", "{curve: flat}"), panel("small", "320 mm, 260 mm", "{curve: flat}"),
            panel("crowned", "900 mm, 700 mm", "{curve: crowned, rise: 12 mm}"),
            panel("rolled", "1200 mm, 800 mm", "{curve: rolled, radius: 3 m}"),
            panel("dome", "600 mm, 600 mm", "{curve: crowned, rise: 200 mm}"),
            panel("timed", "900 mm, 600 mm", "{curve: flat}, decay: [{bay: 1, loss factor: 0.02}]"));
    private static final String[] PANELS = {"flat", "small", "crowned", "rolled", "dome"};
    private static final String[] SHEETS = {"butyl-1.5", "butyl-2", "butyl-4", "butyl-2-stiff-face", "butyl-2-hot",
        "butyl-door", "bitumen-felt"};

    private static String panel(String name, String size, String shape) {
        return "{panel: " + name + ", zone: side, skin: {metal: steel, gauge: 0.8 mm}, size: [" + size
                + "], ribs: none, shape: " + shape + "}";
    }

    private static Bay bay(String panel) {
        return BENCH.panel(panel).all(Bay.class).findFirst().orElseThrow();
    }

    private static BayPower power(String panel) {
        return new BayPower(BENCH.panel(panel));
    }

    private static Optional<DampingSheet> sheet(String name) {
        return Optional.of(new DampingSheet(Workbench.material(name), 2700));
    }

    private static double at(double[] power, ThirdOctave band) {
        return power[ThirdOctave.HEARD.indexOf(band)];
    }

    /**
     * Statistical energy analysis by hand (Lyon and DeJong): modal density S/2 √(m''/D) = 0.218 per hertz, times the
     * band's 231.6 Hz, over m''² ω η and the damping by radiation from both faces; σ at 1 kHz by Leppington's edges.
     */
    @Test
    @DisplayName("at 1 kHz is modal density times what one mode gives off")
    void statistical() {
        double modes = 0.54 / 2 * Math.sqrt(6.28 / 9.612) * (1122.0 - 891.25);
        double critical = 343 * 343 / (2 * Math.PI) * Math.sqrt(6.28 / 9.612);
        double a = Math.sqrt(1000 / critical);
        double edges = ((1 - a * a) * Math.log((1 + a) / (1 - a)) + 2 * a)
                / (4 * Math.PI * Math.PI * Math.pow(1 - a * a, 1.5)) * 3 / 0.54 * 343 / critical;
        double corners = 8 * 343 * 343 * (1 - 2 * a * a)
                / (critical * critical * Math.pow(Math.PI, 4) * 0.54 * a * Math.sqrt(1 - a * a));
        double z = 1.21 * 343 * (edges + corners);
        double told = at(power("flat").bare(bay("flat"), 0.007), ThirdOctave.HZ_1000);
        assertThat(told).isCloseTo(modes * z / (6.28 * 6.28 * 2 * Math.PI * 1000 * 0.007 + 2 * 6.28 * z),
                withinPercentage(1));
    }

    /** Modes of a hinged plate counted one by one, f = π/2 √(D/m'') (m²/a² + n²/b²): Navier, exact. */
    @Test
    @DisplayName("counts modes as there are, from the first to 1 kHz within a tenth")
    void counted() {
        BandModes modes = new BandModes(Sheet.steel(0.0008).skin(), unthrum.physics.Bay.flat(0.9, 0.6),
                BENCH.panel("flat").modes().get(0).ringing());
        double[] told = modes.modes();
        double sum = IntStream.range(0, ThirdOctave.HEARD.size())
                .filter(i -> ThirdOctave.HEARD.get(i).upperEdge() < 1130).mapToDouble(i -> told[i]).sum();
        long hinged = 0;
        long clamped = 0;
        for (int m = 1; m < 40; m++) {
            for (int n = 1; n < 40; n++) {
                double root = Math.sqrt(9.612 / 6.28) * Math.PI / 2;
                hinged += root * (m * m / 0.81 + n * n / 0.36) < 1122 ? 1 : 0;
                clamped += root * (Math.pow(m + 0.5, 2) / 0.81 + Math.pow(n + 0.5, 2) / 0.36) < 1122 ? 1 : 0;
            }
        }
        assertThat(sum).isBetween(0.95 * clamped, 1.1 * hinged);
    }

    @Test
    @DisplayName("falls by 10 lg of the loss factors as measured: ten times the loss, 10 dB")
    void tenfold() {
        Bay timed = bay("timed");
        double[] little = power("timed").bare(timed.measured(0.002, Double.NaN, 0), 1);
        double[] much = power("timed").bare(timed, 1);
        IntStream.range(0, much.length).filter(i -> much[i] > 0)
                .forEach(i -> assertThat(10 * Math.log10(little[i] / much[i])).isCloseTo(10, offset(1e-9)));
    }

    /** v² of a driven mode goes with 1/(m² ω η), ω with 1/√m: 15 lg of the mass. */
    @Test
    @DisplayName("falls by 15 lg of the mass as measured: twice the mass, 4.5 dB")
    void mass() {
        Bay timed = bay("timed");
        double[] bare = power("timed").bare(timed, 1);
        double[] loaded = power("timed").treated(timed, Optional.empty(), 0, 6.28, 20, 1);
        IntStream.range(0, bare.length).filter(i -> bare[i] > 0)
                .forEach(i -> assertThat(10 * Math.log10(bare[i] / loaded[i])).isCloseTo(4.515, offset(0.01)));
    }

    @Test
    @DisplayName("a small stiff bay gains less in the sun than in the workshop, a large slow one may gain more")
    void heat() {
        assertThat(gained("small", 60, ThirdOctave.HZ_400)).isLessThan(gained("small", 20, ThirdOctave.HZ_400) - 1);
        assertThat(gained("flat", 80, ThirdOctave.HZ_1000)).isLessThan(gained("flat", 20, ThirdOctave.HZ_1000) - 1);
    }

    private static double gained(String panel, double celsius, ThirdOctave band) {
        double bare = at(power(panel).bare(bay(panel), 0.007), band);
        return 10 * Math.log10(bare / at(power(panel).treated(bay(panel), sheet("butyl-2"), 0.5, 0, celsius, 0.007),
                band));
    }

    @Test
    @DisplayName("a deep dome, whose single modes no formula tells, is counted by density")
    void dome() {
        double[] bare = power("dome").bare(bay("dome"), 0.007);
        assertThat(at(bare, ThirdOctave.HZ_5000)).isPositive();
        assertThat(at(bare, ThirdOctave.HZ_50)).isZero();
    }

    @Property(tries = 1500)
    void moreCoverMoreMassAndMoreBareLossNeverGiveOffMoreInAnyBand(
            @ForAll @IntRange(min = 0, max = 4) int panel, @ForAll @IntRange(min = 0, max = 6) int sheet,
            @ForAll @DoubleRange(min = 0, max = 1) double cover, @ForAll @DoubleRange(min = 0, max = 1) double moreCover,
            @ForAll @DoubleRange(min = 0, max = 8) double mass, @ForAll @DoubleRange(min = 0, max = 8) double moreMass,
            @ForAll @IntRange(min = 1, max = 500) int lossTenThousandths,
            @ForAll @DoubleRange(min = 0, max = 0.05) double moreLoss,
            @ForAll @IntRange(min = -3, max = 10) int warmth) {
        String name = PANELS[panel];
        double loss = lossTenThousandths / 1e4;
        BayPower power = power(name);
        Optional<DampingSheet> damping = sheet(SHEETS[sheet]);
        double[] before = power.treated(bay(name), damping, cover, mass, warmth * 10, loss);
        double[] covered = power.treated(bay(name), damping, cover + (1 - cover) * moreCover, mass, warmth * 10, loss);
        double[] heavier = power.treated(bay(name), damping, cover, mass + moreMass, warmth * 10, loss);
        double[] deader = power.treated(bay(name), damping, cover, mass, warmth * 10, loss + moreLoss);
        double[] bare = power.bare(bay(name), loss);
        for (int i = 0; i < before.length; i++) {
            double most = before[i] * (1 + 1e-9);
            assertThat(covered[i]).isLessThanOrEqualTo(most);
            assertThat(heavier[i]).isLessThanOrEqualTo(most);
            assertThat(deader[i]).isLessThanOrEqualTo(most);
            assertThat(before[i]).isLessThanOrEqualTo(bare[i] * (1 + 1e-9));
        }
    }
}
