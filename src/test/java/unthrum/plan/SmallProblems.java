package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.facts.Place;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Damping;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.plan.SharingProblem.Take;

/** Sharing problems small enough to try every allotment: up to three panels, two sheets, two foams and two barriers. */
final class SmallProblems {

    private static final List<Material> MATERIALS = materials();
    private static final int PLUG = MATERIALS.size() - 1;

    private SmallProblems() {
    }

    private static List<Material> materials() {
        Catalogue catalogue = Catalogue.load();
        return List.of(catalogue.of(Layer.DAMPING).get(0), catalogue.of(Layer.DAMPING).get(1),
                catalogue.of(Layer.DECOUPLER).get(0), catalogue.of(Layer.DECOUPLER).get(1),
                catalogue.of(Layer.BARRIER).get(0), catalogue.of(Layer.BARRIER).get(1), catalogue.of(Layer.SEAL).get(0));
    }

    static Arbitrary<SharingProblem> any() {
        return Arbitraries.longs().between(0, Long.MAX_VALUE - 1).map(seed -> problem(new Random(seed)));
    }

    private static SharingProblem problem(Random random) {
        List<Goods> goods = MATERIALS.stream().map(m -> new Goods(m, 10 + random.nextInt(30), 1 + random.nextInt(20),
                random.nextInt(3) == 0 ? random.nextInt(40) : 0, random.nextInt(4))).toList();
        List<Room> rooms = new ArrayList<>();
        boolean twins = random.nextBoolean();
        int panels = 1 + random.nextInt(twins ? 2 : 3);
        for (int room = 0; room < panels; room++) {
            rooms.add(room("panel " + room, twins, random));
        }
        return new SharingProblem(rooms, goods, new Bounds(random.nextInt(80), 20 + random.nextInt(100),
                random.nextBoolean() ? 30 : SharingProblem.FREE));
    }

    /** The same sheet lies under several covers, with the same pieces or with others; some offers are nearly the same. */
    private static Room room(String name, boolean twins, Random random) {
        List<Damping> sheets = List.of(Damping.NONE, damping(name, 0, random), damping(name, 1, random),
                damping(name, random.nextInt(2), random));
        List<Offer> offers = new ArrayList<>();
        for (int i = 1 + random.nextInt(5); i > 0; i--) {
            offers.add(offer(sheets.get(random.nextInt(sheets.size())), random));
        }
        offers.removeIf(o -> o.cover().isEmpty() && o.damping().parts().isEmpty());
        for (Offer offer : twins ? List.copyOf(offers).subList(0, Math.min(2, offers.size())) : List.<Offer>of()) {
            offers.add(random.nextInt(offers.size() + 1), twin(offer, random));
        }
        List<Hole> holes = random.nextInt(3) > 0 ? List.of()
                : List.of(new Hole(new Place(name, "hole"), PLUG, 1 + random.nextInt(3), random.nextInt(10), false));
        return new Room(name, random.nextBoolean(), random.nextInt(3) == 0 ? 40 : SharingProblem.FREE, false, offers, holes);
    }

    private static Offer offer(Damping damping, Random random) {
        List<Take> cover = new ArrayList<>();
        for (int layer = 2; layer <= 4; layer += 2) {
            if (random.nextBoolean()) {
                Material material = MATERIALS.get(layer);
                int goods = layer + random.nextInt(2);
                cover.add(new Take(goods, 3 + random.nextInt(10), 5 * random.nextInt(4),
                        new Laid(material, List.of(new Patch(Place.of("panel"), 1, 1)))));
            }
        }
        return new Offer(cover, cover.isEmpty() ? 0 : 5 * random.nextInt(8), 4 + random.nextInt(4), damping);
    }

    /** The same in another material of its kind, or a little worse. */
    private static Offer twin(Offer offer, Random random) {
        int other = random.nextInt(2);
        List<Take> cover = offer.cover().stream().map(t -> new Take(t.goods() - t.goods() % 2 + (t.goods() + other) % 2,
                t.area(), t.mass() + random.nextInt(2), t.laid())).toList();
        Damping damping = offer.damping().parts().isEmpty() ? offer.damping()
                : new Damping((offer.damping().goods() + other) % 2, offer.damping().parts());
        return new Offer(cover, offer.worth() - (cover.isEmpty() ? 0 : random.nextInt(2)), offer.thickness(), damping);
    }

    private static Damping damping(String name, int goods, Random random) {
        List<Part> parts = new ArrayList<>();
        for (int bay = 0; bay <= random.nextInt(2); bay++) {
            List<Step> steps = new ArrayList<>();
            Step last = Step.NONE;
            for (int n = random.nextInt(3); n >= 0; n--) {
                last = new Step(last.area() + 1 + random.nextInt(12), last.mass() + random.nextInt(15),
                        last.worth() + random.nextInt(20));
                steps.add(last);
            }
            parts.add(new Part(new Patch(new Place(name, "bay " + bay), 1, 1), false, steps));
        }
        return new Damping(goods, parts);
    }

    /** The best of all allotments: most worth, then least money. */
    static Allotment best(SharingProblem problem) {
        List<Allotment> best = new ArrayList<>(List.of(Allotment.nothing(problem)));
        each(problem, a -> {
            if (BETTER.compare(a, best.get(0)) > 0 && isAllowed(problem, a)) {
                best.set(0, a);
            }
        });
        return best.get(0);
    }

    private static final Comparator<Allotment> BETTER = Comparator.comparingLong((Allotment a) -> a.net())
            .thenComparingLong(a -> -a.use().money());

    /** Every allotment whatever, one after the other. */
    static void each(SharingProblem problem, Consumer<Allotment> visit) {
        each(problem, 0, Allotment.nothing(problem), visit);
    }

    private static void each(SharingProblem problem, int room, Allotment sofar, Consumer<Allotment> visit) {
        if (room == problem.rooms().size()) {
            visit.accept(sofar);
            return;
        }
        for (Allotment one : inRoom(problem, room, sofar)) {
            each(problem, room + 1, one, visit);
            for (int h = 0; h < problem.rooms().get(room).holes().size(); h++) {
                each(problem, room + 1, one.closing(room, h), visit);
            }
        }
    }

    private static List<Allotment> inRoom(SharingProblem problem, int room, Allotment sofar) {
        List<Allotment> all = new ArrayList<>(List.of(sofar));
        List<Offer> offers = problem.rooms().get(room).offers();
        for (int i = 0; i < offers.size(); i++) {
            List<int[]> counts = new ArrayList<>(List.of(new int[0]));
            for (Part part : offers.get(i).damping().parts()) {
                List<int[]> more = new ArrayList<>();
                for (int[] count : counts) {
                    for (int n = 0; n <= part.steps().size(); n++) {
                        int[] longer = java.util.Arrays.copyOf(count, count.length + 1);
                        longer[count.length] = n;
                        more.add(longer);
                    }
                }
                counts = more;
            }
            for (int[] count : counts) {
                all.add(sofar.with(room, i, count));
            }
        }
        return all;
    }

    static boolean isAllowed(SharingProblem problem, Allotment allotment) {
        return problem.bounds().admit(allotment.use()) && IntStream.range(0, problem.rooms().size()).allMatch(allotment::fits);
    }
}
