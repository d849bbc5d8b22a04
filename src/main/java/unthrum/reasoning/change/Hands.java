package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Shares tasks out between a trial and its twin, each on a thread of its own. Whoever is free takes the next task, and
 * every answer stands where its task stood, so which of the two answered cannot be seen.
 */
final class Hands {

    private Hands() {
    }

    /**
     * @param hand what answers the tasks on one of the two trials; what it sets up is used by one thread only
     * @return the answers in the order of the tasks
     */
    static <T, A> List<A> share(PanelTrial trial, List<T> tasks, Function<PanelTrial, Function<T, A>> hand) {
        if (tasks.size() < 2) {
            return tasks.stream().map(hand.apply(trial)).toList();
        }
        AtomicInteger next = new AtomicInteger();
        CompletableFuture<List<Answered<A>>> other =
                CompletableFuture.supplyAsync(() -> answered(tasks, next, hand.apply(trial.twin())));
        List<Answered<A>> all = new ArrayList<>();
        try {
            all.addAll(answered(tasks, next, hand.apply(trial)));
        } finally {
            next.set(tasks.size());
            all.addAll(joined(other));
        }
        all.sort((a, b) -> Integer.compare(a.index, b.index));
        return all.stream().map(Answered::answer).toList();
    }

    private record Answered<A>(int index, A answer) {
    }

    private static <T, A> List<Answered<A>> answered(List<T> tasks, AtomicInteger next, Function<T, A> hand) {
        List<Answered<A>> mine = new ArrayList<>();
        for (int i = next.getAndIncrement(); i < tasks.size(); i = next.getAndIncrement()) {
            mine.add(new Answered<>(i, hand.apply(tasks.get(i))));
        }
        return mine;
    }

    private static <A> List<A> joined(CompletableFuture<List<A>> other) {
        try {
            return other.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}
