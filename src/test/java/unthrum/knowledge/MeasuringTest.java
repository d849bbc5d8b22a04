package unthrum.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How facts are measured")
class MeasuringTest {

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    /** Ribs are given with their places: no single word or number stands for them. */
    private static final Set<String> NOT_TURNED = Set.of("ribs");

    @Test
    @DisplayName("is said of every fact that may be assumed, and of no other")
    void complete() {
        Set<String> assumed = KNOWLEDGE.assumptions().stream().map(Assumption::fact)
                .filter(f -> !NOT_TURNED.contains(f)).collect(Collectors.toCollection(TreeSet::new));
        assertThat(KNOWLEDGE.measuring()).extracting(Measuring::fact).containsExactlyInAnyOrderElementsOf(assumed);
    }

    @Test
    @DisplayName("gives a scale its step, ends and error together")
    void scales() {
        assertThat(KNOWLEDGE.measuring()).allSatisfy(m -> {
            assertThat(m.least().isPresent()).as(m.fact()).isEqualTo(m.isScale());
            assertThat(m.most().isPresent()).as(m.fact()).isEqualTo(m.isScale());
            assertThat(m.errs().isPresent()).as(m.fact()).isEqualTo(m.isScale());
            if (m.isScale()) {
                assertThat(m.least().orElseThrow().si()).as(m.fact()).isLessThan(m.most().orElseThrow().si());
                assertThat(m.errs().orElseThrow().si()).as(m.fact())
                        .isGreaterThanOrEqualTo(m.step().orElseThrow().si());
            }
        });
    }

    @Test
    @DisplayName("reads in the imperative, without a full stop, and names its source")
    void words() {
        assertThat(KNOWLEDGE.measuring()).allSatisfy(m -> {
            assertThat(m.measure()).as(m.fact()).matches("[a-z].*[^.]");
            assertThat(m.change().orElse("do")).as(m.fact()).matches("[a-z].*[^.]");
            assertThat(KNOWLEDGE.sourceTitle(m.source())).as(m.fact()).isNotEmpty();
        });
    }

    @Test
    @DisplayName("finds the rules that can want each layer")
    void wanting() {
        assertThat(KNOWLEDGE.wanting().of(unthrum.material.Layer.DAMPING)).extracting(RuleCard::id)
                .contains("damping/ringing-bay").doesNotContainNull();
        for (unthrum.material.Layer layer : unthrum.material.Layer.values()) {
            if (layer != unthrum.material.Layer.ANY) {
                assertThat(KNOWLEDGE.wanting().of(layer)).as(layer.word()).isNotEmpty();
            }
        }
    }
}
