package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Damping;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;

@DisplayName("Sharing what there is")
class ExactSharingTest {

    @Provide
    Arbitrary<SharingProblem> problems() {
        return SmallProblems.any();
    }

    private static ExactSharing.Solved solve(SharingProblem problem) {
        assertThat(ExactSharing.isAvailable()).isTrue();
        return ExactSharing.solve(problem, Greedy.share(problem), Patience.usual(), 1);
    }

    @Property(tries = 100)
    @Label("finds what trying everything finds: as much served, less what the money for it would have to bring")
    void equalsBruteForce(@ForAll("problems") SharingProblem problem) {
        Allotment best = SmallProblems.best(problem);
        ExactSharing.Solved solved = solve(problem);
        assertThat(solved.proved()).isTrue();
        assertThat(solved.bound()).isEqualTo(best.net());
        assertThat(solved.allotment().net()).isEqualTo(best.net());
        assertThat(SmallProblems.isAllowed(problem, solved.allotment())).isTrue();
    }

    /** What the ties are held to: each aim's least among the allotments that hold what was found before it. */
    private static void assertLeast(SharingProblem problem, Allotment found, Predicate<Allotment> holds,
                                    ToLongFunction<Allotment> measure) {
        long[] least = {Long.MAX_VALUE};
        SmallProblems.each(problem, a -> {
            if (measure.applyAsLong(a) < least[0] && holds.test(a) && SmallProblems.isAllowed(problem, a)) {
                least[0] = measure.applyAsLong(a);
            }
        });
        assertThat(measure.applyAsLong(found)).isEqualTo(least[0]);
    }

    @Property(tries = 100)
    @Label("settles ties by thickness, what lies on the shelf and few materials, as trying everything does")
    void ties(@ForAll("problems") SharingProblem problem) {
        Allotment found = solve(problem).allotment();
        Predicate<Allotment> packs = a -> a.net() == found.net() && IntStream.range(0, problem.goods().size())
                .allMatch(g -> a.packs(g) <= found.packs(g));
        Predicate<Allotment> panels = packs.and(a -> IntStream.range(0, problem.rooms().size()).allMatch(r ->
                a.worth(r) >= found.worth(r) && a.mass(r) <= found.mass(r)
                        && IntStream.range(0, problem.rooms().get(r).holes().size())
                                .allMatch(h -> a.closes(r, h) == found.closes(r, h))));
        assertLeast(problem, found, panels, Allotment::thickness);
        Predicate<Allotment> thin = panels.and(a -> a.thickness() <= found.thickness());
        assertLeast(problem, found, thin, Allotment::fresh);
        assertLeast(problem, found, thin.and(a -> a.fresh() <= found.fresh()), Allotment::materials);
    }

    private static PackSearch.Found split(SharingModel model, LinearExprBuilder goal, Allotment from, long reached,
                                          double budget, List<PackSearch.Box> boxes) {
        model.get().minimize(goal);
        return new PackSearch(model, goal, from, reached, 1, budget, () -> false).search(boxes);
    }

    @Property(tries = 100)
    @Label("splitting the packs finds it too, proves it, and leaves the cheapest of the best to the next aim")
    void packSearchEqualsBruteForce(@ForAll("problems") SharingProblem problem) {
        Loader.loadNativeLibraries();
        Allotment start = Allotment.nothing(problem);
        SharingModel model = new SharingModel(problem, start);
        PackSearch.Found most = split(model, model.net(), start, 0, 100, List.of(PackSearch.Box.all(model)));
        Allotment best = SmallProblems.best(problem);
        assertThat(-most.best().net()).isEqualTo(most.reached()).isEqualTo(most.bound()).isEqualTo(-best.net());
        assertThat(SmallProblems.isAllowed(problem, most.best())).isTrue();
        model.get().clearObjective();
        model.get().addLessOrEqual(model.net(), most.reached());
        PackSearch.Found least = split(model, model.money(), most.best(), most.best().use().money(), 100, most.boxes());
        assertThat(least.best().use().money()).isEqualTo(least.bound()).isEqualTo(best.use().money());
    }

    @Property(tries = 100)
    @Label("cut short, it claims no more than it knows")
    void cutShort(@ForAll("problems") SharingProblem problem) {
        Loader.loadNativeLibraries();
        Allotment start = Allotment.nothing(problem);
        SharingModel model = new SharingModel(problem, start);
        PackSearch.Found found = split(model, model.net(), start, 0, 0, List.of(PackSearch.Box.all(model)));
        assertThat(found.bound()).isLessThanOrEqualTo(-SmallProblems.best(problem).net());
    }

    @Property(tries = 100)
    @Label("called off after any number of steps, it shares no worse than the ranking and claims no more than it knows")
    void calledOff(@ForAll("problems") SharingProblem problem, @ForAll @IntRange(max = 12) int steps) {
        Loader.loadNativeLibraries();
        Allotment ranked = Greedy.share(problem);
        AtomicInteger asked = new AtomicInteger();
        ExactSharing.Solved solved = ExactSharing.solve(problem, ranked,
                new Patience(Optional.empty(), () -> asked.getAndIncrement() >= steps), 1);
        assertThat(SmallProblems.isAllowed(problem, solved.allotment())).isTrue();
        assertThat(solved.allotment().net()).isGreaterThanOrEqualTo(ranked.net());
        assertThat(solved.bound()).isGreaterThanOrEqualTo(SmallProblems.best(problem).net());
        assertThat(solved.proved()).isEqualTo(asked.get() <= steps);
    }

    @Property(tries = 40)
    @Label("never serves less when a pack more lies on the shelf")
    void onePackMore(@ForAll("problems") SharingProblem problem) {
        long before = solve(problem).allotment().net();
        for (int g = 0; g < problem.goods().size(); g++) {
            List<Goods> more = new java.util.ArrayList<>(problem.goods());
            Goods of = more.get(g);
            more.set(g, new Goods(of.material(), of.pack(), of.price(), of.shelf() + of.pack(), of.asks()));
            SharingProblem richer = new SharingProblem(problem.rooms(), more, problem.bounds());
            assertThat(solve(richer).allotment().net()).isGreaterThanOrEqualTo(before);
        }
    }

    @Property(tries = 150)
    @Label("by rank alone keeps every limit and never serves more than the best")
    void greedyIsAllowed(@ForAll("problems") SharingProblem problem) {
        Allotment greedy = Greedy.share(problem);
        assertThat(SmallProblems.isAllowed(problem, greedy)).isTrue();
        assertThat(greedy.net()).isLessThanOrEqualTo(SmallProblems.best(problem).net());
    }

    @Property(tries = 1000)
    @Label("loses nothing by leaving out what another one beats: not in worth, money, mass, thickness or materials")
    void dominanceLosesNothing(@ForAll("problems") SharingProblem problem) {
        SharingProblem pruned = Dominance.pruned(problem);
        assertThat(figures(pruned)).isEqualTo(figures(problem));
    }

    /** Worth, money, mass, thickness, area of what is not on the shelf, and materials of the best, one after the other. */
    private static List<Long> figures(SharingProblem problem) {
        List<List<Long>> best = new ArrayList<>(List.of(List.of(0L)));
        SmallProblems.each(problem, a -> {
            if (-a.net() <= best.get(0).get(0) && SmallProblems.isAllowed(problem, a)) {
                List<Long> tried = List.of(-a.net(), a.use().money(), a.use().mass(), a.thickness(), a.fresh(),
                        a.materials());
                if (best.get(0).size() == 1 || compare(tried, best.get(0)) < 0) {
                    best.set(0, tried);
                }
            }
        });
        return best.get(0);
    }

    private static int compare(List<Long> some, List<Long> others) {
        return java.util.Arrays.compare(some.toArray(Long[]::new), others.toArray(Long[]::new));
    }

    @Example
    @Label("really leaves out what is beaten: of these problems more than a twentieth")
    void dominancePrunes() {
        long all = 0;
        long kept = 0;
        for (SharingProblem problem : SmallProblems.any().list().ofSize(300).sample()) {
            all += offers(problem);
            kept += offers(Dominance.pruned(problem));
        }
        assertThat((double) kept / all).isLessThan(0.95);
    }

    private static long offers(SharingProblem problem) {
        return problem.rooms().stream().mapToLong(r -> r.offers().size()).sum();
    }

    @Property(tries = 30)
    @Label("gives the same allotment when asked again")
    void deterministic(@ForAll("problems") SharingProblem problem) {
        Allotment once = solve(problem).allotment();
        Allotment again = solve(problem).allotment();
        for (int room = 0; room < problem.rooms().size(); room++) {
            assertThat(again.offer(room)).isEqualTo(once.offer(room));
            assertThat(again.pieces(room)).isEqualTo(once.pieces(room));
        }
    }

    @Property(tries = 100)
    @Label("lays whole what safety asks for, though there is no money for it, and goes no further beyond the limits")
    void safetyComesFirst(@ForAll("problems") SharingProblem problem) {
        Room first = problem.rooms().get(0);
        List<Offer> safe = first.offers().stream().map(o -> new Offer(o.cover(), o.worth(), o.thickness(),
                new Damping(o.damping().goods(), o.damping().parts().stream()
                        .map(p -> new Part(p.patch(), true, p.steps())).toList()))).toList();
        Assume.that(!safe.isEmpty());
        SharingProblem poor = new SharingProblem(List.of(new Room(first.panel(), first.roof(), SharingProblem.FREE, true,
                safe, first.holes())), problem.goods(), new Bounds(0, 0, 0));
        Allotment found = solve(poor).allotment();
        assertThat(found.offer(0)).isNotEqualTo(Allotment.BARE);
        assertThat(found.pieces(0)).isEqualTo(safe.get(found.offer(0)).whole());
        assertThat(beyond(found)).isEqualTo(IntStream.range(0, safe.size())
                .mapToLong(i -> beyond(Allotment.nothing(poor).with(0, i, safe.get(i).whole()))).min().orElseThrow());
    }

    private static long beyond(Allotment allotment) {
        return allotment.excess().money() + allotment.excess().mass() + allotment.excess().roof();
    }

    @Test
    @DisplayName("has nothing to share where nothing is wanted")
    void nothingWanted() {
        SharingProblem empty = new SharingProblem(List.of(), List.of(), new Bounds(0, 0, 0));
        ExactSharing.Solved solved = solve(empty);
        assertThat(solved.proved()).isTrue();
        assertThat(solved.allotment().net()).isZero();
    }
}
