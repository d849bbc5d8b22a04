package unthrum.derive;

import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.physics.Bridges;
import unthrum.physics.Decoupler;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;

/** A barrier that floats over a skin on foam or felt. */
public final class FloatedBarrier {

    private FloatedBarrier() {
    }

    /** The spring that a foam or felt makes. */
    public static Decoupler spring(Material foam, Knowledge knowledge) {
        double depth = foam.thickness().si();
        double modulus = foam.springModulus().orElseThrow().si();
        double loss = knowledge.number("usual/foam-loss-factor");
        return switch (foam.cell()) {
            case FIBRE -> depth < Decoupler.MEASURED_DEPTH ? Decoupler.felt(depth, modulus, foam.density())
                    : Decoupler.fibre(depth, modulus);
            case OPEN -> Decoupler.openCell(depth, modulus, foam.density(), loss);
            case SOLID, CLOSED -> Decoupler.closedCell(depth, modulus, foam.density(), loss);
        };
    }

    /** The usual foam under a barrier, as deep as there is room for. */
    private static Decoupler usual(double depth, Knowledge knowledge) {
        return Decoupler.closedCell(depth, knowledge.number("usual/foam-modulus"),
                knowledge.number("usual/foam-density"), knowledge.number("usual/foam-loss-factor"));
    }

    /**
     * Of skin, usual foam and usual barrier, Hz: above it the barrier floats.
     *
     * @param skin  surface density of the skin, kg/m²
     * @param depth of the foam, m
     */
    static double resonance(double skin, double depth, Knowledge knowledge) {
        return new DoubleLeaf(Leaf.limp(skin), Leaf.limp(knowledge.number("usual/barrier-weight")),
                usual(depth, knowledge), Bridges.NONE).resonance();
    }
}
