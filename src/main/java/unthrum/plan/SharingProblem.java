package unthrum.plan;

import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.facts.Place;
import unthrum.material.Material;

/**
 * What may be laid where, what there is of it, and what must not be exceeded: all in whole numbers, so that every
 * method of solving counts alike. Areas in cm² (pieces for goods sold by the piece), masses in g, thickness in µm,
 * money in hundredths, worth in millionths of what the bare vehicle gives off: finer than anyone could tell apart.
 */
record SharingProblem(List<Room> rooms, List<Goods> goods, Bounds bounds) {

    /** cm² in a square metre. */
    static final double AREA = 1e4;

    /** Grams in a kilogram. */
    static final double MASS = 1e3;

    /** Parts of what the bare vehicle gives off. */
    static final double WORTH = 1e6;

    /** Gains count in steps of so many parts, 0.005 %: finer than anyone could tell; money counts to the part. */
    static final long GAIN = 50;

    /** No bound. */
    static final long FREE = Long.MAX_VALUE / 4;

    /**
     * What one panel can take: one offer at most, and its holes one by one.
     *
     * @param required whether safety asks for one of the offers
     */
    record Room(String panel, boolean roof, long mass, boolean required, List<Offer> offers, List<Hole> holes) {

        long[] figures() {
            return Stream.of(LongStream.of(roof ? 1 : 0, mass, required ? 1 : 0),
                    offers.stream().flatMapToLong(o -> LongStream.of(o.figures())),
                    holes.stream().flatMapToLong(h -> LongStream.of(h.figures()))).flatMapToLong(s -> s).toArray();
        }
    }

    /**
     * One way to treat a panel: its cover as a whole, and so many pieces of damping on each bay.
     *
     * @param worth     of the cover alone
     * @param thickness of the whole stack
     */
    record Offer(List<Take> cover, long worth, long thickness, Damping damping) {

        /** What it is worth with that many pieces on each bay. */
        long worth(int[] pieces) {
            long sum = worth;
            for (int j = 0; j < pieces.length; j++) {
                sum += part(j).at(pieces[j]).worth();
            }
            return sum;
        }

        long mass(int[] pieces) {
            long sum = cover.stream().mapToLong(Take::mass).sum();
            for (int j = 0; j < pieces.length; j++) {
                sum += part(j).at(pieces[j]).mass();
            }
            return sum;
        }

        boolean uses(int goods) {
            return damping.goods() == goods || cover.stream().anyMatch(t -> t.goods() == goods);
        }

        Part part(int index) {
            return damping.parts().get(index);
        }

        /** All pieces. */
        int[] whole() {
            return damping.parts().stream().mapToInt(p -> p.steps().size()).toArray();
        }

        /** The pieces that safety asks for. */
        int[] least() {
            return damping.parts().stream().mapToInt(p -> p.required() ? p.steps().size() : 0).toArray();
        }

        long[] figures() {
            return Stream.of(LongStream.of(-worth(whole()), worth, thickness, damping.goods()),
                    cover.stream().flatMapToLong(t -> LongStream.of(t.goods(), t.area(), t.mass())),
                    damping.parts().stream().flatMapToLong(Part::figures)).flatMapToLong(s -> s).toArray();
        }
    }

    /** A layer of a cover. */
    record Take(int goods, long area, long mass, Laid laid) {
    }

    /** One sheet on some bays, or none on none. */
    record Damping(int goods, List<Part> parts) {

        static final Damping NONE = new Damping(-1, List.of());
    }

    /**
     * A place that the damping can cover, by equal pieces.
     *
     * @param patch    the whole of it
     * @param required whether safety asks for the whole of it
     * @param steps    what is reached with each further piece, summed up
     */
    record Part(Patch patch, boolean required, List<Step> steps) {

        Step whole() {
            return steps.get(steps.size() - 1);
        }

        /** What is reached with that many pieces. */
        Step at(int pieces) {
            return pieces == 0 ? Step.NONE : steps.get(pieces - 1);
        }

        private LongStream figures() {
            return LongStream.concat(LongStream.of(required ? 1 : 0),
                    steps.stream().flatMapToLong(s -> LongStream.of(s.area(), s.mass(), s.worth())));
        }
    }

    /** What a number of pieces takes and brings. */
    record Step(long area, long mass, long worth) {
        static final Step NONE = new Step(0, 0, 0);
    }

    /** A hole and the pieces that close it. */
    record Hole(Place place, int goods, long count, long worth, boolean required) {

        long[] figures() {
            return new long[] {goods, count, -worth, required ? 1 : 0};
        }
    }

    /** A material: what a pack holds and costs, and what lies on the shelf. */
    record Goods(Material material, long pack, long price, long shelf, long asks) {

        /** The least packs that give that much beyond the shelf. */
        long packsFor(long area) {
            long lacking = Math.max(0, area - shelf);
            return (lacking + pack - 1) / pack;
        }
    }

    /** The client's limits and the payload. */
    record Bounds(long money, long mass, long roof) {

        static final Bounds NONE = new Bounds(FREE, FREE, FREE);

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
}
