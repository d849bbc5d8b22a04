package unthrum.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import unthrum.plan.SharingProblem.Bounds;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Part;

/**
 * Shares by rank alone: what safety asks for, then always what brings most, as long as it fits. The exact search
 * starts from here, and where it cannot run this is the answer.
 */
final class Greedy {

    private final SharingProblem problem;
    private final List<int[]> ranked = new ArrayList<>();
    private Allotment allotment;

    private Greedy(SharingProblem problem) {
        this.problem = problem;
        this.allotment = Allotment.nothing(problem);
        for (int i = 0; i < problem.choices().size(); i++) {
            for (int j = 0; j < problem.choices().get(i).parts().size(); j++) {
                ranked.add(new int[] {i, j});
            }
        }
        ranked.sort(Comparator.comparingLong((int[] at) -> -part(at).whole().worth())
                .thenComparingLong(at -> problem.goodsOf(choice(at)).shelf() > 0 ? 0 : 1)
                .thenComparingInt(at -> at[0]).thenComparingInt(at -> at[1]));
    }

    static Allotment share(SharingProblem problem) {
        Greedy greedy = new Greedy(problem);
        Bounds free = new Bounds(SharingProblem.FREE, SharingProblem.FREE, SharingProblem.FREE);
        greedy.fill(free, true);
        greedy.fill(problem.bounds().atLeast(greedy.allotment.use()), false);
        return greedy.allotment;
    }

    /** Again and again until nothing more fits: a decoupler fits only once its barrier is there. */
    private void fill(Bounds bounds, boolean required) {
        boolean more = true;
        while (more) {
            more = false;
            for (int[] at : ranked) {
                boolean due = !required || part(at).required();
                if (due && allotment.pieces(at[0], at[1]) == 0 && !isServed(at)) {
                    more |= lay(at, bounds, required ? part(at).steps().size() : 1);
                }
            }
        }
    }

    /** Whether another material lies there already. */
    private boolean isServed(int[] at) {
        Choice choice = choice(at);
        for (int i = 0; i < problem.choices().size(); i++) {
            Choice other = problem.choices().get(i);
            if (i != at[0] && other.room() == choice.room() && other.layer() == choice.layer() && !other.isAlone()
                    && allotment.lays(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean lay(int[] at, Bounds bounds, int least) {
        for (int n = part(at).steps().size(); n >= least; n--) {
            Allotment tried = allotment.with(at[0], at[1], n);
            if (bounds.admit(tried.use()) && tried.fitsThePanels()) {
                allotment = tried;
                return true;
            }
        }
        return false;
    }

    private Choice choice(int[] at) {
        return problem.choices().get(at[0]);
    }

    private Part part(int[] at) {
        return choice(at).parts().get(at[1]);
    }
}
