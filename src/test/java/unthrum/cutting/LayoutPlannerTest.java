package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

@DisplayName("The layout planner")
class LayoutPlannerTest {

    private static final Search SHORT = Search.ofSteps(1, 2000);

    private static CuttingLayout plan(List<Piece> pieces, List<Stock> stock, CutRule cuts, int margin) {
        CuttingLayout layout = LayoutPlanner.plan(new CuttingTask(pieces, stock, cuts, margin), SHORT);
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        return layout;
    }

    private static List<Piece> pieces(int width, int height, int count, boolean mayTurn) {
        return List.of(new Piece("patch", width, height, count, mayTurn));
    }

    @Nested
    @DisplayName("keeps")
    class Keeps {

        @Test
        @DisplayName("the knife margin between pieces, and asks for none at the edge")
        void margin() {
            List<Piece> two = pieces(1000, 500, 2, false);
            assertThat(plan(two, List.of(Stock.unlimited("s", 2020, 500)), CutRule.GUILLOTINE, 20).wholeSheets()).isEqualTo(1);
            assertThat(plan(two, List.of(Stock.unlimited("s", 2019, 500)), CutRule.GUILLOTINE, 20).wholeSheets()).isEqualTo(2);
        }

        @Test
        @DisplayName("the material's direction")
        void direction() {
            List<Stock> narrow = List.of(Stock.unlimited("s", 500, 1000));
            assertThat(plan(pieces(1000, 500, 1, true), narrow, CutRule.FREE, 0).unplaced()).isEmpty();
            assertThat(plan(pieces(1000, 500, 1, false), narrow, CutRule.FREE, 0).unplaced()).hasSize(1);
        }

        @Test
        @DisplayName("to guillotine cuts where asked: a pinwheel then takes a second sheet")
        void pinwheel() {
            List<Piece> vanes = List.of(new Piece("lying", 6, 4, 2, false), new Piece("standing", 4, 6, 2, false));
            List<Stock> stock = List.of(Stock.unlimited("s", 10, 10));
            assertThat(plan(vanes, stock, CutRule.FREE, 0).provedLeast()).isTrue();
            assertThat(plan(vanes, stock, CutRule.FREE, 0).wholeSheets()).isEqualTo(1);
            assertThat(plan(vanes, stock, CutRule.GUILLOTINE, 0).wholeSheets()).isEqualTo(2);
        }
    }

    @Nested
    @DisplayName("cuts from a roll with edge-to-edge cuts")
    class FromRoll {

        @Test
        @DisplayName("the least length: four patches two by two, a knife margin between the rows and none at the end")
        void shortest() {
            CuttingLayout layout = plan(pieces(300, 200, 4, false), List.of(Stock.roll("roll", 610)), CutRule.GUILLOTINE, 10);
            assertThat(layout.rollLength()).isEqualTo(410);
            assertThat(layout.provedLeast()).isTrue();
        }

        @Test
        @DisplayName("on from a start that the first, coarse goals cannot better")
        void finerGoals() {
            List<Piece> mixed = List.of(new Piece("a", 410, 370, 3, true), new Piece("b", 230, 190, 5, true),
                new Piece("c", 150, 640, 2, true));
            CuttingTask task = new CuttingTask(mixed, List.of(Stock.roll("roll", 1000)), CutRule.GUILLOTINE, 0);
            CuttingLayout start = LayoutPlanner.plan(task, Search.ofSteps(1, 1));
            CuttingLayout layout = LayoutPlanner.plan(task, Search.ofSteps(1, 20000));
            assertThat(LayoutCheck.faults(layout)).isEmpty();
            assertThat(layout.rollLength()).isLessThan(start.rollLength());
        }
    }

    @Nested
    @DisplayName("prefers")
    class Prefers {

        @Test
        @DisplayName("an offcut to a new sheet")
        void offcut() {
            List<Stock> stock = List.of(Stock.unlimited("sheet", 1000, 1000), Stock.offcut("offcut", 400, 300));
            CuttingLayout layout = plan(pieces(300, 400, 1, true), stock, CutRule.FREE, 0);
            assertThat(layout.sheets()).extracting(s -> s.stock().name()).containsExactly("offcut");
            assertThat(layout.provedLeast()).isTrue();
        }

        @Test
        @DisplayName("the smaller of two sheets where it does")
        void smaller() {
            List<Stock> stock = List.of(Stock.unlimited("large", 1000, 1000), Stock.unlimited("small", 500, 500));
            assertThat(plan(pieces(250, 250, 4, false), stock, CutRule.FREE, 0).sheets())
                .extracting(s -> s.stock().name()).containsExactly("small");
        }

        @Test
        @DisplayName("a large usable offcut: six squares in one row of three by two leave two fifths of the sheet")
        void largeOffcut() {
            CuttingLayout layout = plan(pieces(200, 200, 6, true), List.of(Stock.unlimited("s", 600, 1000)), CutRule.FREE, 0);
            assertThat(layout.largestOffcut()).isGreaterThanOrEqualTo(600L * 590);
        }
    }

    @Nested
    @DisplayName("searching on where the sheets run short")
    class ShortOfSheets {

        private CuttingLayout search(int steps) {
            List<Piece> pieces = List.of(new Piece("a", 53, 58, 4, true), new Piece("b", 65, 15, 3, false),
                new Piece("c", 10, 39, 2, false), new Piece("d", 58, 79, 1, true), new Piece("e", 39, 58, 3, false),
                new Piece("f", 66, 41, 2, true));
            List<Stock> stock = List.of(Stock.sheets("sheet", 120, 90, 1), Stock.offcut("offcut", 70, 60));
            CuttingLayout layout = LayoutPlanner.plan(new CuttingTask(pieces, stock, CutRule.GUILLOTINE, 3),
                Search.ofSteps(7, steps));
            assertThat(LayoutCheck.faults(layout)).isEmpty();
            return layout;
        }

        @Test
        @DisplayName("leaves no more over, though a layout that would be better with sheets enough comes up on the way")
        void neverWorse() {
            assertThat(search(40).unplacedArea()).isPositive();
            assertThat(search(422).unplacedArea()).isLessThanOrEqualTo(search(40).unplacedArea());
        }
    }

    @Nested
    @DisplayName("says")
    class Says {

        @Test
        @DisplayName("which pieces are too large, and lays out the rest")
        void tooLarge() {
            List<Piece> pieces = List.of(new Piece("roof", 2000, 900, 1, true), new Piece("patch", 100, 100, 3, true));
            CuttingLayout layout = plan(pieces, List.of(Stock.unlimited("s", 1000, 1000)), CutRule.FREE, 0);
            assertThat(layout.unplaced()).containsExactly(pieces.get(0));
            assertThat(layout.wholeSheets()).isEqualTo(1);
        }

        @Test
        @DisplayName("how many pieces are left when the stock ends")
        void stockEnds() {
            CuttingLayout layout = plan(pieces(60, 60, 5, true), List.of(Stock.sheets("s", 100, 100, 3)), CutRule.FREE, 0);
            assertThat(layout.unplaced()).containsExactly(new Piece("patch", 60, 60, 2, true));
            assertThat(layout.provedLeast()).isFalse();
        }

        @Test
        @DisplayName("that a roll is not mixed with sheets")
        void mixedRoll() {
            List<Stock> mixed = List.of(Stock.roll("roll", 100), Stock.unlimited("sheet", 100, 100));
            assertThatThrownBy(() -> new CuttingTask(pieces(9, 9, 1, true), mixed, CutRule.FREE, 0))
                .hasMessageContaining("a roll is cut by itself");
        }
    }

    @Nested
    @DisplayName("answers")
    class Answers {

        private final CuttingTask task = new CuttingTask(pieces(60, 45, 20, true),
            List.of(Stock.unlimited("s", 110, 100)), CutRule.FREE, 0);

        @Test
        @DisplayName("a cancelled search with the best layout so far")
        void cancelled() {
            CuttingLayout layout = LayoutPlanner.plan(task, SHORT.cancelled(() -> true));
            assertThat(LayoutCheck.faults(layout)).isEmpty();
            assertThat(layout.unplaced()).isEmpty();
        }

        @Test
        @DisplayName("its listener with costs that never rise and the bound")
        void listener() {
            List<Search.Progress> heard = new ArrayList<>();
            CuttingLayout layout = LayoutPlanner.plan(task, SHORT.listener(heard::add));
            assertThat(heard).isNotEmpty().allMatch(p -> p.bound() == layout.bound());
            assertThat(heard).extracting(Search.Progress::cost).isSortedAccordingTo((a, b) -> b - a);
            assertThat(heard.get(heard.size() - 1).cost()).isEqualTo(layout.cost());
        }
    }
}
