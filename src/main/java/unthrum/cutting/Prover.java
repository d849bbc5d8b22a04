package unthrum.cutting;

import java.util.List;

/**
 * Decides at times, while a search goes on, whether one sheet fewer can do: with few blanks soon and briefly, with more
 * only after a long search, each time later and longer. Asked on clean sheets of one kind alone. Guillotine layouts
 * are free ones too, so what cannot be cut freely cannot be cut at all; a free layout found does not count for them.
 */
final class Prover {

    /** More blanks than that are beyond an exact answer. */
    private static final int MOST_BLANKS = 60;
    /** About so few are often decided at once; with more the search is left alone for longer. */
    private static final int FEW_BLANKS = 25;
    private static final long SOON = 3000;
    private static final long LATE = 40_000;
    /** In the solver's units, about a second each. */
    private static final double BRIEF = 0.2;
    private static final double LONG = 4;
    private static final int GROWTH = 10;

    private final CuttingTask task;
    private final List<Blank> blanks;
    private final Watch watch;
    private final boolean apt;
    private long dueAt;
    private double budget;

    Prover(CuttingTask task, List<Blank> blanks, Watch watch) {
        this.task = task;
        this.blanks = blanks;
        this.watch = watch;
        this.apt = !task.fromRoll() && task.stock().size() == 1 && task.stock().get(0).kind() == Stock.Kind.SHEET
            && task.stock().get(0).defects().isEmpty()
            && blanks.size() <= MOST_BLANKS;
        boolean few = blanks.size() <= FEW_BLANKS;
        this.dueAt = few ? SOON : LATE;
        this.budget = few ? BRIEF : LONG;
    }

    boolean isDue(Filling best) {
        return apt && watch.steps() >= dueAt && best.pool().isEmpty() && best.cost() > watch.bound() && !watch.over();
    }

    /** A layout of one sheet fewer if there is one; raises the bound if there is none; often neither. */
    List<List<Placed>> ask(Filling best) {
        Stock sheet = task.stock().get(0);
        int margin = task.knifeMargin();
        ExactFit.Answer answer = ExactFit.ask(blanks, sheet.width() + margin, sheet.height() + margin,
            best.cost() - 1, budget, watch::ended);
        dueAt *= GROWTH;
        budget *= GROWTH;
        if (answer.impossible()) {
            watch.raiseBound(best.cost());
        }
        return task.cuts() == CutRule.FREE ? answer.layout() : List.of();
    }
}
