package unthrum.plan;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Take;
import unthrum.plan.SharingProblem.Use;

/** An answer to a sharing problem: which offer each panel gets, with how many pieces, and which holes are closed. */
final class Allotment {

    /** No offer. */
    static final int BARE = -1;

    private final SharingProblem problem;
    private final Given[] rooms;
    private final long[] areas;

    /** What one panel gets. */
    private record Given(int offer, int[] pieces, boolean[] closed) {
    }

    private Allotment(SharingProblem problem, Given[] rooms, long[] areas) {
        this.problem = problem;
        this.rooms = rooms;
        this.areas = areas;
    }

    static Allotment nothing(SharingProblem problem) {
        return new Allotment(problem, problem.rooms().stream()
                .map(r -> new Given(BARE, new int[0], new boolean[r.holes().size()])).toArray(Given[]::new),
                new long[problem.goods().size()]);
    }

    /** The same with another offer on a panel. */
    Allotment with(int room, int offer, int... pieces) {
        return with(room, new Given(offer, pieces, rooms[room].closed));
    }

    /** The same with a hole of a panel closed. */
    Allotment closing(int room, int hole) {
        boolean[] closed = rooms[room].closed.clone();
        closed[hole] = true;
        return with(room, new Given(rooms[room].offer, rooms[room].pieces, closed));
    }

    private Allotment with(int room, Given given) {
        Given[] others = rooms.clone();
        others[room] = given;
        long[] more = areas.clone();
        addAreas(more, room, rooms[room], -1);
        addAreas(more, room, given, 1);
        return new Allotment(problem, others, more);
    }

    private void addAreas(long[] sums, int room, Given given, int sign) {
        Room of = problem.rooms().get(room);
        if (given.offer != BARE) {
            Offer offer = of.offers().get(given.offer);
            for (Take take : offer.cover()) {
                sums[take.goods()] += sign * take.area();
            }
            for (int j = 0; j < given.pieces.length; j++) {
                sums[offer.damping().goods()] += sign * offer.part(j).at(given.pieces[j]).area();
            }
        }
        for (int h = 0; h < given.closed.length; h++) {
            if (given.closed[h]) {
                sums[of.holes().get(h).goods()] += sign * of.holes().get(h).count();
            }
        }
    }

    int offer(int room) {
        return rooms[room].offer;
    }

    int[] pieces(int room) {
        return rooms[room].pieces.clone();
    }

    boolean closes(int room, int hole) {
        return rooms[room].closed[hole];
    }

    private Offer laid(int room) {
        return problem.rooms().get(room).offers().get(rooms[room].offer);
    }

    long worth() {
        long worth = 0;
        for (int room = 0; room < rooms.length; room++) {
            worth += worth(room);
            for (int h = 0; h < rooms[room].closed.length; h++) {
                Hole hole = problem.rooms().get(room).holes().get(h);
                worth += rooms[room].closed[h] ? hole.worth() : 0;
            }
        }
        return worth;
    }

    /** The same less what the packs to be bought would have to bring. */
    long net() {
        long net = worth();
        for (int g = 0; g < areas.length; g++) {
            net -= packs(g) * problem.goods().get(g).asks();
        }
        return net;
    }

    /** What the layers on a panel are worth. */
    long worth(int room) {
        return rooms[room].offer == BARE ? 0 : laid(room).worth(rooms[room].pieces);
    }

    long area(int goods) {
        return areas[goods];
    }

    long packs(int goods) {
        return problem.goods().get(goods).packsFor(areas[goods]);
    }

    Use use() {
        long money = 0;
        for (int g = 0; g < areas.length; g++) {
            money += packs(g) * problem.goods().get(g).price();
        }
        long mass = 0;
        long roof = 0;
        for (int room = 0; room < rooms.length; room++) {
            long here = mass(room);
            mass += here;
            roof += problem.rooms().get(room).roof() ? here : 0;
        }
        return new Use(money, mass, roof);
    }

    /** Of the layers on a panel. */
    long mass(int room) {
        return rooms[room].offer == BARE ? 0 : laid(room).mass(rooms[room].pieces);
    }

    /** What it takes beyond the bounds. */
    Use excess() {
        Use use = use();
        return new Use(Math.max(0, use.money() - problem.bounds().money()),
                Math.max(0, use.mass() - problem.bounds().mass()), Math.max(0, use.roof() - problem.bounds().roof()));
    }

    boolean isOverTheBounds() {
        return !problem.bounds().admit(use());
    }

    /** How thick all stacks are together. */
    long thickness() {
        long thickness = 0;
        for (int room = 0; room < rooms.length; room++) {
            if (rooms[room].offer != BARE) {
                thickness += laid(room).thickness();
            }
        }
        return thickness;
    }

    private boolean damps(int room) {
        return Arrays.stream(rooms[room].pieces).anyMatch(n -> n > 0);
    }

    /** The area of what does not lie on the shelf; closing pieces do not count. */
    long fresh() {
        return materialsOfLayers().stream().filter(g -> problem.goods().get(g).shelf() == 0).mapToLong(g -> areas[g]).sum();
    }

    /** How many different materials are used; closing pieces do not count. */
    long materials() {
        return materialsOfLayers().size();
    }

    private Set<Integer> materialsOfLayers() {
        Set<Integer> used = new TreeSet<>();
        for (int room = 0; room < rooms.length; room++) {
            if (rooms[room].offer != BARE) {
                laid(room).cover().forEach(t -> used.add(t.goods()));
                if (damps(room)) {
                    used.add(laid(room).damping().goods());
                }
            }
        }
        return used;
    }

    /** Whether a panel bears what lies on it; its holes are no matter of the panel. */
    boolean fits(int room) {
        if (rooms[room].offer == BARE) {
            return !problem.rooms().get(room).required();
        }
        int[] least = laid(room).least();
        for (int j = 0; j < least.length; j++) {
            if (rooms[room].pieces[j] < least[j]) {
                return false;
            }
        }
        return mass(room) <= problem.rooms().get(room).mass();
    }

    /** What is left of the packs and the shelf. */
    long left(int goods) {
        Goods of = problem.goods().get(goods);
        long shelf = areas[goods] > 0 ? of.shelf() : 0;
        return Math.max(0, shelf + packs(goods) * of.pack() - areas[goods]);
    }
}
