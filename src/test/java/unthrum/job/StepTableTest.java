package unthrum.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.Scenarios;
import unthrum.reading.Problems;

@DisplayName("The table of steps")
class StepTableTest {

    private static final Path SHIPPED = Path.of("rules", "steps.yaml");

    @TempDir
    private Path folder;

    private StepTable read(String was, String is) throws IOException {
        String text = Files.readString(SHIPPED);
        assertThat(text).contains(was);
        return StepTable.read(Files.writeString(folder.resolve("mine.yaml"), text.replaceFirst(
                java.util.regex.Pattern.quote(was), java.util.regex.Matcher.quoteReplacement(is))), Scenarios.KNOWLEDGE);
    }

    @Test
    @DisplayName("as shipped has a source and a reason for every habit, and a basis for every figure of labour")
    void told() {
        StepTable table = StepTable.load(Scenarios.KNOWLEDGE);
        assertThat(table.order()).allSatisfy(o -> {
            assertThat(o.order()).matches("order/[a-z-]+");
            assertThat(o.because()).as(o.order()).hasSizeBetween(15, 160).matches("[a-z].*[^.]");
            assertThat(Scenarios.KNOWLEDGE.sourceTitle(o.source())).isNotBlank();
        });
        assertThat(table.steps()).allSatisfy(s -> {
            assertThat(s.does()).as(s.step()).matches("[A-Z].*\\.").hasSizeBetween(20, 240);
            assertThat(s.labour().seconds(1, 1)).as(s.step()).isPositive();
        });
        assertThat(table.areas()).filteredOn(Area::isWalkedOn).containsExactly(table.areas().get(table.areas().size() - 1));
    }

    @Test
    @DisplayName("puts the habits of the trade in the words of its guide: what is underfoot comes last")
    void underfoot() {
        StepTable table = StepTable.load(Scenarios.KNOWLEDGE);
        OrderRule last = table.order().stream().filter(o -> o.order().equals("order/floor-last")).findFirst().orElseThrow();
        assertThat(table.steps()).filteredOn(s -> s.stage() == Stage.FIT && s.isDoneInside())
                .allSatisfy(s -> assertThat(last.before().orElseThrow()).contains(s.step()));
        assertThat(table.steps()).filteredOn(s -> s.stage() == Stage.FIT && s.lays() && s.isDoneInside())
                .allSatisfy(s -> assertThat(last.then()).contains(s.step()));
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            zones: [roof]                       | zones: [roof, floor]                    | the zone 'floor', which is in 'overhead' already
            zones: [roof]                       | zones: [bonnet]                         | nothing for: roof; expected each zone in an area
            work: [tap again]                   | work: [vacuum]                          | nothing for: tap again; expected a step for all work that a rule may ask for
            layers: [absorber]                  | layers: [barrier]                       | 2 steps that lay 'barrier'
            least: job/wax-set                  | least: job/wax-sets                     | 'job/wax-sets'; expected a threshold that is a time; did you mean 'job/wax-set'?
            least: job/wax-set                  | least: job/one-person-load              | 'job/one-person-load'; expected a threshold that is a time
            rules: [sealing/seam-sealant]       | rules: [sealing/seam]                   | 'sealing/seam'; expected the id of a rule
            before: [lay soft foam]             | before: [lay soft foams]                | 'lay soft foams'; expected a step of this file; did you mean 'lay soft foam'?
            areas: [low, floor]                 | areas: [low, flor]                      | 'flor'; expected an area of this file; did you mean 'floor'?
            source: icsc-0087                   | source: hearsay                         | 'hearsay'; expected a source or a mark
            - step: wax                         | - step: damp                            | 'damp' again; expected each name once
            """)
    @DisplayName("locates a mistake and says what is expected")
    void mistakes(String was, String is, String says) {
        assertThatThrownBy(() -> read(was, is)).isInstanceOf(Problems.class).hasMessageContaining(says)
                .message().matches("(?s).*mine\\.yaml:\\d+:\\d+: .*");
    }

    @Nested
    @DisplayName("a circle")
    class Circles {
        @Test
        @DisplayName("is an error of the file that names every rule that makes it")
        void named() {
            Problems problems = catchThrowableOfType(Problems.class, () -> read("apart:\n", """
                      - {order: order/trim-first, before: [refit linings], then: [barrier], where: same area, because: x, source: common-practice}

                    apart:
                    """.stripIndent()));
            assertThat(problems.all()).hasSize(1);
            assertThat(problems.getMessage()).contains("mine.yaml:", "a circle: ", "by order/trim-first",
                    "by order/layers-before-trim", "'refit linings, overhead' before 'barrier, overhead'")
                    .doesNotContain("order/drive-before");
        }

        @Test
        @DisplayName("through several areas is found too: nobody can do the floor before what is done standing on it")
        void throughAreas() {
            assertThatThrownBy(() -> read("apart:\n", """
                      - {order: order/floor-first, before: [barrier], then: [insulate], where: everywhere, because: x, source: common-practice}

                    apart:
                    """)).isInstanceOf(Problems.class).hasMessageContaining("order/floor-first")
                    .hasMessageContaining("order/floor-last");
        }
    }

    @Nested
    @DisplayName("the sorting")
    class Sorting {
        private static Edge edge(int before, int then) {
            return new Edge(before, then, new OrderRule("order/" + before + "-" + then, Optional.empty(), List.of(),
                    OrderRule.Where.EVERYWHERE, "", ""));
        }

        @Test
        @DisplayName("takes the first that is free, and what is freed before what stands behind it")
        void firstFree() {
            assertThat(Ordering.of(4, List.of(edge(3, 0), edge(0, 2)))).containsExactly(1, 3, 0, 2);
            assertThat(Ordering.of(3, List.of())).containsExactly(0, 1, 2);
        }

        @Test
        @DisplayName("finds the ring itself, without what merely hangs on it")
        void ring() {
            Ordering.Circle circle = catchThrowableOfType(Ordering.Circle.class,
                    () -> Ordering.of(5, List.of(edge(0, 1), edge(1, 2), edge(2, 3), edge(3, 1), edge(3, 4))));
            assertThat(circle.edges()).extracting(e -> e.before() + ">" + e.then())
                    .containsExactlyInAnyOrder("1>2", "2>3", "3>1");
            assertThat(circle.getMessage()).contains("order/1-2", "order/2-3", "order/3-1").doesNotContain("order/3-4");
        }
    }
}
