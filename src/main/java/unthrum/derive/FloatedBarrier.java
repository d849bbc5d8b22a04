package unthrum.derive;

import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
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
        this.floated = new DoubleLeaf(Leaf.limp(skin), Leaf.limp(barrier), foam);
        this.direct = Leaf.limp(skin + barrier);
    }

    /** The spring that a foam or felt makes. */
    public static Decoupler spring(Material foam, Knowledge knowledge) {
        double depth = foam.thickness().si();
        double modulus = foam.springModulus().orElseThrow().si();
        double loss = knowledge.number("usual/foam-loss-factor");
        return switch (foam.cell()) {
            case OPEN, FIBRE -> Decoupler.openCell(depth, modulus, loss);
            case SOLID, CLOSED -> Decoupler.closedCell(depth, modulus, loss);
        };
    }

    /** Of skin, foam and barrier, Hz. */
    double resonance() {
        return floated.resonance();
    }

    /** Mean over the bands in which floating is judged, dB; negative where the foam does harm. */
    public double gain() {
        double gain = 0;
        int bands = 0;
        for (ThirdOctave band : ThirdOctave.values()) {
            if (band.nominal() >= LOWEST_BAND && band.nominal() <= HIGHEST_BAND) {
                gain += floated.transmissionLoss(band.centre()) - direct.transmissionLoss(band.centre());
                bands++;
            }
        }
        return gain / bands;
    }
}
