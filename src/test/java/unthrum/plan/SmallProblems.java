package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import unthrum.facts.Pairing;
import unthrum.facts.Pairing.Tie;
import unthrum.facts.Place;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.effect.Patch;

/** Sharing problems small enough to try every allotment: up to four panels and three materials. */
final class SmallProblems {

    private static final List<Material> MATERIALS = materials();

    private SmallProblems() {
    }

    /** A damping sheet, a decoupler and a barrier: the decoupler is useless without the barrier. */
    private static List<Material> materials() {
        Catalogue catalogue = Catalogue.load();
        return List.of(catalogue.of(Layer.DAMPING).get(0), catalogue.of(Layer.DAMPING).get(1),
                catalogue.of(Layer.DECOUPLER).get(0), catalogue.of(Layer.BARRIER).get(0));
    }

    static Arbitrary<SharingProblem> any() {
        return Arbitraries.longs().between(0, Long.MAX_VALUE - 1).map(seed -> problem(new Random(seed)));
    }

    private static SharingProblem problem(Random random) {
        int skipped = random.nextInt(MATERIALS.size());
        List<Goods> goods = new ArrayList<>();
        for (int g = 0; g < MATERIALS.size(); g++) {
            goods.add(new Goods(MATERIALS.get(g), 10 + random.nextInt(30), 1 + random.nextInt(20),
                    random.nextInt(3) == 0 ? random.nextInt(40) : 0));
        }
        List<Room> rooms = new ArrayList<>();
        List<Choice> choices = new ArrayList<>();
        int panels = 1 + random.nextInt(4);
        for (int room = 0; room < panels; room++) {
            String name = "panel " + room;
            rooms.add(new Room(name, random.nextBoolean(), random.nextBoolean() ? 20 : SharingProblem.FREE,
                    random.nextInt(3) == 0 ? 40 : SharingProblem.FREE,
                    List.of(new Pairing(Place.of(name), Layer.DECOUPLER, Tie.NEEDS, Layer.BARRIER))));
            for (int g = 0; g < MATERIALS.size() && choices.size() < 8; g++) {
                if (g != skipped && random.nextInt(4) > 0) {
                    choices.add(choice(room, g, random));
                }
            }
        }
        return new SharingProblem(rooms, choices, goods, new Bounds(random.nextInt(60), 20 + random.nextInt(100),
                random.nextBoolean() ? 30 : SharingProblem.FREE));
    }

    private static Choice choice(int room, int goods, Random random) {
        Layer layer = MATERIALS.get(goods).layer();
        int pieces = layer == Layer.DAMPING ? 1 + random.nextInt(3) : 1;
        List<Step> steps = new ArrayList<>();
        Step last = Step.NONE;
        for (int n = 0; n < pieces; n++) {
            last = new Step(last.area() + 1 + random.nextInt(12), last.mass() + random.nextInt(15),
                    last.worth() + random.nextInt(20) + 1);
            steps.add(last);
        }
        Patch patch = new Patch(Place.of("panel " + room), 1, 1);
        return new Choice(room, goods, layer, 4 + random.nextInt(12), List.of(new Part(patch, false, steps)));
    }

    /** The best of all allotments: most worth, then least money. */
    static Allotment best(SharingProblem problem) {
        return best(problem, 0, Allotment.nothing(problem));
    }

    private static final Comparator<Allotment> BETTER = Comparator.comparingLong(Allotment::worth)
            .thenComparing(a -> -a.use().money());

    private static Allotment best(SharingProblem problem, int choice, Allotment sofar) {
        if (choice == problem.choices().size()) {
            return isAllowed(problem, sofar) ? sofar : Allotment.nothing(problem);
        }
        Allotment best = best(problem, choice + 1, sofar);
        for (int n = 1; n <= problem.choices().get(choice).parts().get(0).steps().size(); n++) {
            Allotment other = best(problem, choice + 1, sofar.with(choice, 0, n));
            best = BETTER.compare(other, best) > 0 ? other : best;
        }
        return best;
    }

    static boolean isAllowed(SharingProblem problem, Allotment allotment) {
        return problem.bounds().admit(allotment.use()) && allotment.fitsThePanels();
    }
}
