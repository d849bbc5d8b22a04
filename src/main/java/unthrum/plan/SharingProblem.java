package unthrum.plan;

import java.util.List;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.effect.Patch;

/**
 * What may be laid where, what there is of it, and what must not be exceeded: all in whole numbers, so that every
 * method of solving counts alike. Areas in cm² (pieces for goods sold by the piece), masses in g, thickness in µm,
 * money in hundredths, worth in twentieths of a
 * weight point over a square metre: finer than anyone could tell apart.
 */
record SharingProblem(List<Room> rooms, List<Choice> choices, List<Goods> goods, Bounds bounds) {

    /** cm² in a square metre. */
    static final double AREA = 1e4;

    /** Grams in a kilogram. */
    static final double MASS = 1e3;

    /** Parts of a weight point over a square metre. */
    static final double WORTH = 20;

    /** No bound. */
    static final long FREE = Long.MAX_VALUE / 4;

    /** What one panel can take. */
    record Room(String panel, boolean roof, long stack, long mass, List<Pairing> pairings) {
    }

    /**
     * A material on a panel.
     *
     * @param room      index of the panel
     * @param goods     index of the material
     * @param thickness what it adds to the stack
     */
    record Choice(int room, int goods, Layer layer, long thickness, List<Part> parts) {

        /** A hole is closed by itself; of every other layer a panel gets one material at most. */
        boolean isAlone() {
            return layer == Layer.SEAL;
        }
    }

    /**
     * A place that the material can cover, by equal pieces.
     *
     * @param patch    the whole of it
     * @param required whether safety asks for the whole of it
     * @param steps    what is reached with each further piece, summed up
     */
    record Part(Patch patch, boolean required, List<Step> steps) {

        Place place() {
            return patch.place();
        }

        Step whole() {
            return steps.get(steps.size() - 1);
        }

        /** What is reached with that many pieces. */
        Step at(int pieces) {
            return pieces == 0 ? Step.NONE : steps.get(pieces - 1);
        }
    }

    /** What a number of pieces takes and brings. */
    record Step(long area, long mass, long worth) {
        static final Step NONE = new Step(0, 0, 0);
    }

    /** A material: what a pack holds and costs, and what lies on the shelf. */
    record Goods(Material material, long pack, long price, long shelf) {

        /** The least packs that give that much beyond the shelf. */
        long packsFor(long area) {
            long lacking = Math.max(0, area - shelf);
            return (lacking + pack - 1) / pack;
        }
    }

    /** The client's limits and the payload. */
    record Bounds(long money, long mass, long roof) {

        boolean admit(Use use) {
            return use.money <= money && use.mass <= mass && use.roof <= roof;
        }

        /** Widened where safety takes more than the client wants to give. */
        Bounds atLeast(Use use) {
            return new Bounds(Math.max(money, use.money), Math.max(mass, use.mass), Math.max(roof, use.roof));
        }
    }

    /** What an allotment takes of what is bounded. */
    record Use(long money, long mass, long roof) {
    }

    Goods goodsOf(Choice choice) {
        return goods.get(choice.goods());
    }
}
