package unthrum.cutting;

import java.util.List;

/**
 * Decides at times, while a search goes on, whether one sheet fewer, or a shorter roll, can do: with few blanks soon
 * and briefly, with more only after a long search, each time later and longer. Asked on clean stock of one kind alone.
 * Guillotine layouts are free ones too, so what cannot be cut freely cannot be cut at all; a free layout found does not
 * count for them.
 */
final class Prover {

    /** More blanks than that are beyond an exact answer. */
    private static final int MOST_BLANKS = 60;
    /** Of a roll the length counts, which is far more to tell apart than whole sheets. */
    private static final int MOST_ON_ROLL = 12;
    /** About so few are often decided at once; with more the search is left alone for longer. */
    private static final int FEW_BLANKS = 25;
    private static final long SOON = 3000;
    private static final long LATE = 150_000;
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
        boolean few = blanks.size() <= FEW_BLANKS;
        this.apt = task.stock().size() == 1 && task.stock().get(0).kind() != Stock.Kind.OFFCUT
            && task.stock().get(0).defects().isEmpty()
            && blanks.size() <= (task.fromRoll() ? MOST_ON_ROLL : MOST_BLANKS);
        this.dueAt = few ? SOON : LATE;
        this.budget = few ? BRIEF : LONG;
    }

    boolean isDue(Filling best) {
        return apt && watch.steps() >= dueAt && best.pool().isEmpty() && best.cost() > watch.bound() && !watch.ended();
    }

    /** A cheaper layout if one is found; raises the bound if there is none; often neither. */
    List<List<Placed>> ask(Filling best) {
        Stock stock = task.stock().get(0);
        int margin = task.knifeMargin();
        int width = stock.width() + margin;
        ExactFit.Answer answer = task.fromRoll()
            ? ExactFit.askShortest(blanks, width, best.cost() - 1 + margin, budget, watch::ended)
            : ExactFit.ask(blanks, width, stock.height() + margin, best.cost() - 1, budget, watch::ended);
        if (answer.impossible()) {
            watch.raiseBound(best.cost());
        } else if (answer.settled() && task.fromRoll()) {
            watch.raiseBound(length(answer.layout().get(0)) - margin);
        }
        dueAt *= GROWTH;
        budget *= GROWTH;
        return task.cuts() == CutRule.FREE ? answer.layout() : List.of();
    }

    private static int length(List<Placed> placed) {
        return placed.stream().mapToInt(Placed::top).max().orElse(0);
    }
}
