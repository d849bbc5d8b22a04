package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The exact answer, whether pieces fit onto so many sheets,")
class ExactFitTest {

    private static final double BUDGET = 5;
    private static final int WIDTH = 5;
    private static final int HEIGHT = 4;

    /** Nine pieces that fill 89 % of a sheet and yet do not fit into it. */
    private static final CuttingTask STUBBORN = new CuttingTask(
        List.of(new Piece("lying", 40, 20, 4, false), new Piece("block", 40, 30, 4, false),
            new Piece("square", 30, 30, 1, false)),
        List.of(Stock.unlimited("sheet", 100, 100)), CutRule.GUILLOTINE, 0);

    /** By trying every place of whole numbers, one blank after the other. */
    private static boolean fits(List<Raised> blanks, int from, int height, List<List<int[]>> sheets) {
        if (from == blanks.size()) {
            return true;
        }
        for (int[] way : blanks.get(from).ways()) {
            for (List<int[]> sheet : sheets) {
                for (int x = 0; x + way[0] <= WIDTH; x++) {
                    for (int y = 0; y + way[1] <= height; y++) {
                        int[] here = {x, y, x + way[0], y + way[1]};
                        if (sheet.stream().allMatch(o -> here[0] >= o[2] || here[2] <= o[0]
                            || here[1] >= o[3] || here[3] <= o[1])) {
                            sheet.add(here);
                            if (fits(blanks, from + 1, height, sheets)) {
                                return true;
                            }
                            sheet.remove(sheet.size() - 1);
                        }
                    }
                }
            }
        }
        return false;
    }

    private static boolean fits(List<Raised> blanks, int sheets) {
        List<List<int[]>> empty = new ArrayList<>();
        for (int i = 0; i < sheets; i++) {
            empty.add(new ArrayList<>());
        }
        return fits(blanks, 0, HEIGHT, empty);
    }

    private static List<Raised> asTheyAre(List<Blank> blanks) {
        return blanks.stream().map(b -> {
            List<int[]> ways = new ArrayList<>(List.of(new int[] {b.width(), b.height()}));
            if (b.mayTurn()) {
                ways.add(new int[] {b.height(), b.width()});
            }
            return new Raised(b, ways, false);
        }).toList();
    }

    @Provide
    Arbitrary<List<Blank>> blanks() {
        return Combinators.combine(Arbitraries.integers().between(1, WIDTH), Arbitraries.integers().between(1, HEIGHT),
                Arbitraries.of(true, false))
            .as((width, height, mayTurn) -> new Blank(100 * width + 10 * height + (mayTurn ? 1 : 0), width, height,
                mayTurn && width != height))
            .list().ofMinSize(2).ofMaxSize(5);
    }

    @Property(tries = 300)
    void agreesWithTryingEveryPlace(@ForAll("blanks") List<Blank> blanks,
                                     @ForAll @IntRange(min = 1, max = 2) int sheets) {
        ExactFit.Answer answer = ExactFit.ask(blanks, WIDTH, HEIGHT, sheets, BUDGET, () -> false);
        boolean fits = fits(asTheyAre(blanks), sheets);
        assertThat(answer.fits()).isEqualTo(fits);
        assertThat(answer.impossible()).isEqualTo(!fits);
        answer.layout().forEach(ExactFitTest::assertNothingLiesLoose);
    }

    /** Each rests below and on its left against the edge or another, and none on another. */
    private static void assertNothingLiesLoose(List<Placed> placed) {
        for (Placed p : placed) {
            assertThat(placed).as("%s", p).noneMatch(o -> o != p && meets(o, p.x(), p.y(), p))
                .matches(all -> p.x() == 0 || all.stream().anyMatch(o -> o != p && meets(o, p.x() - 1, p.y(), p)))
                .matches(all -> p.y() == 0 || all.stream().anyMatch(o -> o != p && meets(o, p.x(), p.y() - 1, p)));
        }
    }

    private static boolean meets(Placed other, int x, int y, Placed p) {
        return other.x() < x + p.width() && other.right() > x && other.y() < y + p.height() && other.top() > y;
    }

    @Property(tries = 500)
    void raisingLengthsChangesNoAnswer(@ForAll("blanks") List<Blank> blanks) {
        assertThat(fits(Raised.all(blanks, WIDTH, HEIGHT), 1)).isEqualTo(fits(asTheyAre(blanks), 1));
    }

    @Property(tries = 300)
    void noMeasureForbidsWhatFits(@ForAll("blanks") List<Blank> blanks) {
        List<Raised> raised = Raised.all(blanks, WIDTH, HEIGHT);
        if (!fits(raised, 1)) {
            return;
        }
        for (Measure measure : Measure.telling(raised, WIDTH, HEIGHT)) {
            long least = raised.stream()
                .mapToLong(r -> r.ways().stream().mapToLong(measure::of).min().orElseThrow()).sum();
            assertThat(least).as("%s", measure).isLessThanOrEqualTo(measure.capacity());
        }
    }

    @Property(tries = 200)
    void findsAndProvesTheLeastLengthOfARollOfFewPieces(@ForAll("blanks") List<Blank> blanks) {
        List<Piece> pieces = IntStream.range(0, blanks.size()).mapToObj(i -> new Piece("piece " + i,
            blanks.get(i).width(), blanks.get(i).height(), 1, blanks.get(i).mayTurn())).toList();
        CuttingLayout layout = LayoutPlanner.plan(
            new CuttingTask(pieces, List.of(Stock.roll("roll", WIDTH)), CutRule.FREE, 0), Search.ofSteps(1, 4000));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat(layout.provedLeast()).isTrue();
        assertThat(fits(asTheyAre(blanks), 0, layout.rollLength(), List.of(new ArrayList<>()))).isTrue();
        assertThat(fits(asTheyAre(blanks), 0, layout.rollLength() - 1, List.of(new ArrayList<>()))).isFalse();
    }

    @Test
    @DisplayName("proves least what the quick bounds leave open, for guillotine cuts too")
    void closesTheGap() {
        CuttingLayout quick = LayoutPlanner.plan(STUBBORN, Search.ofSteps(1, 1000));
        CuttingLayout proved = LayoutPlanner.plan(STUBBORN, Search.ofSteps(1, 5000));
        assertThat(quick.provedLeast()).isFalse();
        assertThat(proved.provedLeast()).isTrue();
        assertThat(LayoutCheck.faults(proved)).isEmpty();
    }

    @Test
    @DisplayName("stops when called off in the middle of a hard question")
    void stops() {
        SplittableRandom random = new SplittableRandom(1);
        List<Blank> blanks = IntStream.range(0, 40)
            .mapToObj(i -> new Blank(i, random.nextInt(5, 80), random.nextInt(5, 80), false)).toList();
        int height = (int) (1.02 * blanks.stream().mapToLong(Blank::area).sum() / 300);
        AtomicInteger asked = new AtomicInteger();
        assertThat(ExactFit.ask(blanks, 300, height, 1, 1e6, () -> asked.incrementAndGet() > 10))
            .isEqualTo(ExactFit.Answer.UNKNOWN);
    }
}
