package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.physics.TransferMatrix.Foam;
import unthrum.physics.TransferMatrix.Plate;

/**
 * No published digits of barriers floated on foam over sheet metal were found, so a transfer-matrix solution stands in.
 * It knows nothing of edges and ties. It is given foams half, as and twice as stiff as told, since so far do the published
 * moduli scatter (skeletons of like foams 80 to 294 kPa; polyethylene 0.23 to 0.57 MPa), and as lossy as printed (0.06 to
 * 0.18, felt 0.5 to 0.88).
 */
@DisplayName("A barrier floated on foam, against waves through plates and foam")
class FloatedBarrierTest {

    /**
     * A decoupler of the catalogue.
     *
     * @param depth mm
     * @param modulus kPa
     * @param flow resistivity, N·s/m⁴; nought for closed cells; foams after Cox and D'Antonio, felt from memory
     */
    private record Bed(double depth, double modulus, double density, double flow, double... losses) {
        Decoupler told() {
            double metres = depth / 1000;
            if (flow == 0) {
                return Decoupler.closedCell(metres, modulus * 1e3, density, LOSS);
            }
            return felt() ? Decoupler.felt(metres, modulus * 1e3, density)
                    : Decoupler.openCell(metres, modulus * 1e3, density, LOSS);
        }

        Foam real(double stiffer, double loss) {
            return new Foam(depth / 1000, modulus * 1e3 * stiffer, loss, density, flow);
        }

        double half() {
            return density * depth / 2000;
        }

        boolean felt() {
            return losses[0] > 0.2;
        }

        double usualLoss() {
            return felt() ? FELT_LOSS : LOSS;
        }
    }

    /**
     * A barrier of the catalogue, filled vinyl or rubber of 100 MPa.
     *
     * @param thick mm
     */
    private record Heavy(double mass, double thick) {
        double rigidity() {
            return new Sheet(100e6, 0.45, mass / thick * 1000, thick / 1000).flexuralRigidity();
        }
    }

    private static final double LOSS = 0.15;
    private static final double FELT_LOSS = 0.7;
    private static final double[] FOAMS = {0.06, 0.15, 0.18};
    private static final double[] FELTS = {0.5, 0.7, 0.88};

    private static final List<Bed> BEDS = List.of(new Bed(3, 230, 33.3, 0, FOAMS), new Bed(6, 230, 33.3, 0, FOAMS),
            new Bed(10, 230, 33, 0, FOAMS), new Bed(6, 350, 60, 0, FOAMS), new Bed(6, 400, 83.3, 0, FOAMS),
            new Bed(3, 1500, 100, 0, FOAMS), new Bed(10, 130, 30, 8000, FOAMS), new Bed(10, 90, 10, 12500, FOAMS),
            new Bed(8, 100, 100, 40000, FELTS));
    private static final List<Sheet> SKINS = List.of(Sheet.steel(0.0006), Sheet.steel(0.0008), Sheet.steel(0.001),
            Sheet.steel(0.0015), Sheet.aluminium(0.001), Sheet.aluminium(0.0015), Sheet.aluminium(0.002));
    private static final List<Heavy> BARRIERS = List.of(new Heavy(3, 1.5), new Heavy(4, 2), new Heavy(5, 2.5),
            new Heavy(5.4, 3), new Heavy(6, 3));

    private static final WallErrors SCATTERED = scattered(0.5, 1, 2);
    private static final WallErrors EVENLY = scattered(0.5, 0.71, 1, 1.41, 2);

    private interface Comparison {
        void of(DoubleLeaf told, Bed bed, Sheet skin, Heavy barrier);
    }

    private static void each(Comparison comparison) {
        for (Bed bed : BEDS) {
            for (Sheet skin : SKINS) {
                for (Heavy heavy : BARRIERS) {
                    Leaf metal = Leaf.stiff(skin.surfaceDensity() + bed.half(), skin.flexuralRigidity(), 0.01);
                    Leaf barrier = Leaf.stiff(heavy.mass() + bed.half(), heavy.rigidity(), 0.2);
                    comparison.of(new DoubleLeaf(metal, barrier, bed.told(), Bridges.NONE), bed, skin, heavy);
                }
            }
        }
    }

    private static double solved(Sheet skin, Foam foam, Heavy barrier, ThirdOctave band) {
        return CompositeLoss.loss(TransferMatrix.passed(new Plate(skin.surfaceDensity(), skin.flexuralRigidity(), 0.01),
                foam, new Plate(barrier.mass(), barrier.rigidity(), 0.2), band));
    }

    private static String region(DoubleLeaf told, ThirdOctave band) {
        double ratio = band.centre() / told.resonance();
        return ratio < DoubleLeaf.AROUND ? "below" : ratio < DoubleLeaf.ABOVE ? "around" : "above";
    }

    private static WallErrors scattered(double... stiffness) {
        WallErrors errors = new WallErrors();
        each((told, bed, skin, barrier) -> {
            for (ThirdOctave band : ThirdOctave.HEARD) {
                double loss = told.transmissionLoss(band);
                double stated = told.springUncertainty(band);
                for (double stiffer : stiffness) {
                    for (double lossy : bed.losses()) {
                        errors.add(region(told, band), loss, solved(skin, bed.real(stiffer, lossy), barrier, band), stated);
                    }
                }
            }
        });
        return errors;
    }

    @Test
    @DisplayName("foam just as told: the formula itself, within 1.5 dB in 19 of 20 bands everywhere, and right in the mean")
    void sameFoam() {
        WallErrors errors = new WallErrors();
        each((told, bed, skin, barrier) -> ThirdOctave.HEARD.forEach(band -> errors.add(region(told, band),
                CompositeLoss.loss(Samples.mean(band, told::passed)),
                solved(skin, bed.real(1, bed.usualLoss()), barrier, band), 0)));
        for (String region : List.of("below", "around", "above")) {
            assertThat(errors.of(region).mean()).as(region).isCloseTo(0, within(0.5));
            assertThat(errors.of(region).rootMeanSquare()).as(region).isLessThan(0.7);
            assertThat(errors.of(region).shareWithin(1.5)).as(region).isGreaterThanOrEqualTo(0.95);
        }
    }

    @Test
    @DisplayName("foam half to twice as stiff: nine of ten bands within what is stated, and no more stated than they show")
    void scatteredFoam() {
        assertThat(SCATTERED.count()).isEqualTo(9 * 7 * 5 * 9 * 24);
        hold(SCATTERED);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"below", "around", "above"})
    @DisplayName("the same below, around and above the resonance by itself")
    void eachRegion(String region) {
        assertThat(SCATTERED.of(region).count()).isGreaterThan(8000);
        hold(SCATTERED.of(region));
    }

    private static void hold(WallErrors errors) {
        assertThat(errors.mean()).isCloseTo(0, within(0.6));
        assertThat(errors.shareWithin()).isGreaterThanOrEqualTo(0.9);
        assertThat(errors.stated()).isLessThanOrEqualTo(1.3 * errors.rootMeanSquare());
    }

    /** Foams between those lie closer to the middle, so that more is stated than 1.3 times what they show. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"below", "around", "above"})
    @DisplayName("foams evenly from half to twice as stiff: nine of ten bands within what is stated too")
    void evenly(String region) {
        assertThat(EVENLY.of(region).shareWithin()).isGreaterThanOrEqualTo(0.9);
    }

    @ParameterizedTest(name = "{0} kg/m² at {1} Hz")
    @CsvSource({"6, 200", "10, 500", "16, 1000"})
    @DisplayName("the solution itself: two plates on a layer too stiff to matter are one plate by the mass law")
    void stuckTogether(double mass, double frequency) {
        ThirdOctave band = ThirdOctave.of(frequency);
        double passed = TransferMatrix.passed(new Plate(mass / 2, 0, 0), new Foam(0.003, 20e6, 0.01, 1, 0),
                new Plate(mass / 2, 0, 0), band);

        assertThat(CompositeLoss.loss(passed)).isCloseTo(MassLaw.field(mass, band.centre(), Air.AT_20_CELSIUS), within(0.4));
    }
}
