package unthrum.derive;

import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.physics.Bridges;
import unthrum.physics.Decoupler;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;
import unthrum.physics.ThirdOctave;

/** A usual barrier floated over a skin on some foam, against the same barrier laid direct. */
public final class FloatedBarrier {

    /** Between these third octaves, Hz, floating a barrier is worth its foam. Common practice, no source. */
    private static final double LOWEST_BAND = 250;
    private static final double HIGHEST_BAND = 4000;

    private final DoubleLeaf floated;
    private final Leaf direct;

    /** @param skin surface density of the skin, kg/m² */
    public FloatedBarrier(double skin, Decoupler foam, Knowledge knowledge) {
        double barrier = knowledge.number("usual/barrier-weight");
        this.floated = new DoubleLeaf(Leaf.limp(skin), Leaf.limp(barrier), foam, Bridges.NONE);
        this.direct = Leaf.limp(skin + barrier);
    }

    /** The spring that a foam or felt makes. */
    public static Decoupler spring(Material foam, Knowledge knowledge) {
        double depth = foam.thickness().si();
        double modulus = foam.springModulus().orElseThrow().si();
        double loss = knowledge.number("usual/foam-loss-factor");
        return switch (foam.cell()) {
            case FIBRE -> Decoupler.fibre(depth, modulus);
            case OPEN -> Decoupler.openCell(depth, modulus, foam.density(), loss);
            case SOLID, CLOSED -> Decoupler.closedCell(depth, modulus, foam.density(), loss);
        };
    }

    /** The usual foam under a barrier, as deep as there is room for. */
    static Decoupler usual(double depth, Knowledge knowledge) {
        return Decoupler.closedCell(depth, knowledge.number("usual/foam-modulus"),
                knowledge.number("usual/foam-density"), knowledge.number("usual/foam-loss-factor"));
    }

    /** Of skin, foam and barrier, Hz. */
    double resonance() {
        return floated.resonance();
    }

    /** Mean over the third octaves from 250 Hz to 4 kHz, dB; negative where the foam does harm. */
    public double gain() {
        double gain = 0;
        int bands = 0;
        for (ThirdOctave band : ThirdOctave.HEARD) {
            if (band.nominal() >= LOWEST_BAND && band.nominal() <= HIGHEST_BAND) {
                gain += floated.transmissionLoss(band) - direct.transmissionLoss(band);
                bands++;
            }
        }
        return gain / bands;
    }
}
