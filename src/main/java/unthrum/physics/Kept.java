package unthrum.physics;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Answers of a function that hangs on nothing but its question, kept for whoever asks again: the panels of a vehicle
 * are twins, and each is tried in many ways. When too many are kept, all are let go. For any number of threads; the
 * function must not ask the same keeper.
 */
public final class Kept<Q, A> {

    private final int most;
    private final Function<Q, A> function;
    private final Map<Q, A> known = new ConcurrentHashMap<>();

    /** @param most so many answers are kept */
    public Kept(int most, Function<Q, A> function) {
        this.most = most;
        this.function = function;
    }

    public A of(Q question) {
        A answer = known.get(question);
        if (answer != null) {
            return answer;
        }
        if (known.size() >= most) {
            known.clear();
        }
        return known.computeIfAbsent(question, function);
    }
}
