package unthrum.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;

@DisplayName("Sharing what there is")
class ExactSharingTest {

    @Provide
    Arbitrary<SharingProblem> problems() {
        return SmallProblems.any();
    }

    private static ExactSharing.Solved solve(SharingProblem problem) {
        assertThat(ExactSharing.isAvailable()).isTrue();
        return ExactSharing.solve(problem, Greedy.share(problem), Patience.usual());
    }

    @Property(tries = 150)
    @Label("finds what trying everything finds: as much served, for as little money")
    void equalsBruteForce(@ForAll("problems") SharingProblem problem) {
        Allotment best = SmallProblems.best(problem);
        ExactSharing.Solved solved = solve(problem);
        assertThat(solved.proved()).isTrue();
        assertThat(solved.bound()).isEqualTo(best.worth());
        assertThat(solved.allotment().worth()).isEqualTo(best.worth());
        assertThat(solved.allotment().use().money()).isEqualTo(best.use().money());
        assertThat(SmallProblems.isAllowed(problem, solved.allotment())).isTrue();
    }

    private static PackSearch.Found split(SharingModel model, LinearExprBuilder goal, Allotment from, long reached,
                                          double budget, List<PackSearch.Box> boxes) {
        model.get().minimize(goal);
        return new PackSearch(model, goal, from, reached, budget, () -> false).search(boxes);
    }

    @Property(tries = 100)
    @Label("splitting the packs finds it too, proves it, and leaves the cheapest of the best to the next aim")
    void packSearchEqualsBruteForce(@ForAll("problems") SharingProblem problem) {
        Loader.loadNativeLibraries();
        Allotment start = Allotment.nothing(problem);
        SharingModel model = new SharingModel(problem, start);
        PackSearch.Found most = split(model, model.worth(), start, 0, 100, List.of(PackSearch.Box.all(model)));
        Allotment best = SmallProblems.best(problem);
        assertThat(-most.best().worth()).isEqualTo(most.reached()).isEqualTo(most.bound()).isEqualTo(-best.worth());
        assertThat(SmallProblems.isAllowed(problem, most.best())).isTrue();
        model.get().clearObjective();
        model.get().addLessOrEqual(model.worth(), most.reached());
        PackSearch.Found least = split(model, model.money(), most.best(), most.best().use().money(), 100, most.boxes());
        assertThat(least.best().use().money()).isEqualTo(least.bound()).isEqualTo(best.use().money());
    }

    @Property(tries = 100)
    @Label("cut short, it claims no more than it knows")
    void cutShort(@ForAll("problems") SharingProblem problem) {
        Loader.loadNativeLibraries();
        Allotment start = Allotment.nothing(problem);
        SharingModel model = new SharingModel(problem, start);
        PackSearch.Found found = split(model, model.worth(), start, 0, 0, List.of(PackSearch.Box.all(model)));
        assertThat(found.bound()).isLessThanOrEqualTo(-SmallProblems.best(problem).worth());
    }

    @Property(tries = 100)
    @Label("called off after any number of steps, it shares no worse than the ranking and claims no more than it knows")
    void calledOff(@ForAll("problems") SharingProblem problem, @ForAll @IntRange(max = 12) int steps) {
        Loader.loadNativeLibraries();
        Allotment ranked = Greedy.share(problem);
        AtomicInteger asked = new AtomicInteger();
        ExactSharing.Solved solved = ExactSharing.solve(problem, ranked,
                new Patience(Optional.empty(), () -> asked.getAndIncrement() >= steps));
        assertThat(SmallProblems.isAllowed(problem, solved.allotment())).isTrue();
        assertThat(solved.allotment().worth()).isGreaterThanOrEqualTo(ranked.worth());
        assertThat(solved.bound()).isGreaterThanOrEqualTo(SmallProblems.best(problem).worth());
        assertThat(solved.proved()).isEqualTo(asked.get() <= steps);
    }

    @Property(tries = 100)
    @Label("never serves less when a pack more lies on the shelf")
    void onePackMore(@ForAll("problems") SharingProblem problem) {
        long before = solve(problem).allotment().worth();
        for (int g = 0; g < problem.goods().size(); g++) {
            List<Goods> more = new java.util.ArrayList<>(problem.goods());
            Goods of = more.get(g);
            more.set(g, new Goods(of.material(), of.pack(), of.price(), of.shelf() + of.pack()));
            SharingProblem richer = new SharingProblem(problem.rooms(), problem.choices(), more, problem.bounds());
            assertThat(solve(richer).allotment().worth()).isGreaterThanOrEqualTo(before);
        }
    }

    @Property(tries = 150)
    @Label("by rank alone keeps every limit and never serves more than the best")
    void greedyIsAllowed(@ForAll("problems") SharingProblem problem) {
        Allotment greedy = Greedy.share(problem);
        assertThat(SmallProblems.isAllowed(problem, greedy)).isTrue();
        assertThat(greedy.worth()).isLessThanOrEqualTo(SmallProblems.best(problem).worth());
    }

    @Property(tries = 150)
    @Label("loses nothing by leaving out materials that another one beats everywhere")
    void dominanceLosesNothing(@ForAll("problems") SharingProblem problem) {
        Allotment all = SmallProblems.best(problem);
        Allotment pruned = SmallProblems.best(Dominance.pruned(problem));
        assertThat(pruned.worth()).isEqualTo(all.worth());
        assertThat(pruned.use().money()).isEqualTo(all.use().money());
    }

    @Property(tries = 30)
    @Label("gives the same allotment when asked again")
    void deterministic(@ForAll("problems") SharingProblem problem) {
        Allotment once = solve(problem).allotment();
        Allotment again = solve(problem).allotment();
        for (int i = 0; i < problem.choices().size(); i++) {
            assertThat(again.pieces(i, 0)).isEqualTo(once.pieces(i, 0));
        }
    }

    @Property(tries = 60)
    @Label("lays whole what safety asks for, though there is no money for it")
    void safetyComesFirst(@ForAll("problems") SharingProblem problem) {
        List<Choice> choices = problem.choices().stream().limit(1).map(c -> new Choice(0, c.goods(), c.layer(), 0,
                List.of(new Part(c.parts().get(0).patch(), true, c.parts().get(0).steps())))).toList();
        SharingProblem poor = new SharingProblem(List.of(new SharingProblem.Room("panel 0", false, SharingProblem.FREE,
                SharingProblem.FREE, List.of())), choices, problem.goods(), new Bounds(0, 0, 0));
        Allotment allotment = solve(poor).allotment();
        for (int i = 0; i < choices.size(); i++) {
            assertThat(allotment.pieces(i, 0)).isEqualTo(choices.get(i).parts().get(0).steps().size());
        }
    }

    @Test
    @DisplayName("has nothing to share where nothing is wanted")
    void nothingWanted() {
        SharingProblem empty = new SharingProblem(List.of(), List.of(), List.of(), new Bounds(0, 0, 0));
        ExactSharing.Solved solved = solve(empty);
        assertThat(solved.proved()).isTrue();
        assertThat(solved.allotment().worth()).isZero();
    }
}
