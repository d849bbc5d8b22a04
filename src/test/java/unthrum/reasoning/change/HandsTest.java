package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@DisplayName("Tasks shared out between a trial and its twin")
class HandsTest {

    private static final List<Integer> TASKS = IntStream.range(0, 200).boxed().toList();

    @Test
    @Timeout(60)
    @DisplayName("are done by both, and every answer stands where its task stood")
    void order() {
        Set<PanelTrial> worked = ConcurrentHashMap.newKeySet();
        CountDownLatch both = new CountDownLatch(2);
        try (PanelTrial trial = Vehicles.trial(Vehicles.survey(Vehicles.FILES.get(0)))) {
            assertThat(Hands.share(trial, TASKS, hand -> {
                worked.add(hand);
                both.countDown();
                return task -> {
                    waited(both);
                    return -task;
                };
            })).isEqualTo(TASKS.stream().map(task -> -task).toList());
            assertThat(worked).containsExactlyInAnyOrder(trial, trial.twin());
        }
    }

    @Test
    @DisplayName("what goes wrong in either comes out as it was thrown")
    void wrong() {
        try (PanelTrial trial = Vehicles.trial(Vehicles.survey(Vehicles.FILES.get(0)))) {
            for (boolean mine : List.of(true, false)) {
                assertThatThrownBy(() -> Hands.share(trial, TASKS, hand -> {
                    if (mine == (hand == trial)) {
                        throw new IllegalArgumentException("cannot be answered");
                    }
                    return task -> task;
                })).isExactlyInstanceOf(IllegalArgumentException.class).hasMessage("cannot be answered");
            }
        }
    }

    private static void waited(CountDownLatch both) {
        try {
            both.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
