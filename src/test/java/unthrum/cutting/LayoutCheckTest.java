package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.cutting.LayoutCheck.Kind;

@DisplayName("The check of a cutting layout")
class LayoutCheckTest {

    private static final Stock SHEET = Stock.sheets("sheet", 1000, 700, 1);
    private static final Piece DOOR = new Piece("door", 500, 300, 2, false);
    private static final Piece SILL = new Piece("sill", 200, 100, 1, true);
    private static final Placement SILL_LAID = new Placement("sill", 505, 0, 200, 100, false);

    private static Placement door(int x, int y) {
        return new Placement("door", x, y, 500, 300, false);
    }

    private static CuttingLayout layout(CutRule cuts, int margin, List<Piece> pieces, SheetLayout... sheets) {
        return new CuttingLayout(new CuttingTask(pieces, List.of(SHEET), cuts, margin), List.of(sheets), List.of(), 0);
    }

    private static List<Kind> kinds(CuttingLayout layout) {
        return LayoutCheck.faults(layout).stream().map(LayoutCheck.Fault::kind).toList();
    }

    private static List<Kind> kinds(Placement... placements) {
        return kinds(layout(CutRule.GUILLOTINE, 5, List.of(DOOR, SILL), new SheetLayout(SHEET, List.of(placements))));
    }

    @Test
    @DisplayName("passes pieces at the edge and exactly a knife margin apart")
    void sound() {
        assertThat(kinds(door(0, 0), door(0, 305), SILL_LAID)).isEmpty();
    }

    @Test
    @DisplayName("passes a piece turned that may turn")
    void turned() {
        assertThat(kinds(door(0, 0), door(0, 305), new Placement("sill", 505, 0, 100, 200, true))).isEmpty();
    }

    @Nested
    @DisplayName("finds")
    class Finds {

        @Test
        @DisplayName("a piece over the right edge, and over the left")
        void outside() {
            assertThat(kinds(door(0, 0), door(501, 305), SILL_LAID)).containsExactly(Kind.OUTSIDE);
            assertThat(kinds(door(0, 0), door(-1, 305), SILL_LAID)).containsExactly(Kind.OUTSIDE);
        }

        @Test
        @DisplayName("pieces over each other")
        void overlap() {
            assertThat(kinds(door(0, 0), door(0, 299), SILL_LAID)).contains(Kind.OVERLAP);
        }

        @Test
        @DisplayName("pieces nearer than the knife margin")
        void tooClose() {
            assertThat(kinds(door(0, 0), door(0, 304), SILL_LAID)).contains(Kind.TOO_CLOSE).doesNotContain(Kind.OVERLAP);
        }

        @Test
        @DisplayName("a piece of the wrong size")
        void wrongSize() {
            assertThat(kinds(door(0, 0), door(0, 305), new Placement("sill", 505, 0, 199, 100, false)))
                .containsExactly(Kind.WRONG_SIZE);
        }

        @Test
        @DisplayName("a piece turned against its direction")
        void againstDirection() {
            assertThat(kinds(door(0, 0), new Placement("door", 505, 105, 300, 500, true), SILL_LAID))
                .containsExactly(Kind.TURNED);
        }

        @Test
        @DisplayName("a piece missing, and one too many")
        void wrongCount() {
            assertThat(kinds(door(0, 0), SILL_LAID)).containsExactly(Kind.WRONG_COUNT);
            assertThat(kinds(door(0, 0), door(0, 305), SILL_LAID, new Placement("sill", 505, 105, 200, 100, false)))
                .containsExactly(Kind.WRONG_COUNT);
        }

        @Test
        @DisplayName("a piece nobody asked for")
        void unknownPiece() {
            assertThat(kinds(door(0, 0), door(0, 305), SILL_LAID, new Placement("lid", 505, 105, 9, 9, false)))
                .containsExactly(Kind.UNKNOWN_PIECE);
        }

        @Test
        @DisplayName("more sheets than there are, and a sheet that is not in stock")
        void stock() {
            SheetLayout first = new SheetLayout(SHEET, List.of(door(0, 0), SILL_LAID));
            SheetLayout second = new SheetLayout(SHEET, List.of(door(0, 0)));
            SheetLayout foreign = new SheetLayout(Stock.sheets("sheet", 1000, 900, 1), List.of(door(0, 0)));
            assertThat(kinds(layout(CutRule.FREE, 5, List.of(DOOR, SILL), first, second)))
                .containsExactly(Kind.STOCK_ENDS);
            assertThat(kinds(layout(CutRule.FREE, 5, List.of(DOOR, SILL), first, foreign)))
                .containsExactly(Kind.UNKNOWN_STOCK);
        }

        @Test
        @DisplayName("a pinwheel where only edge-to-edge cuts are allowed, and lets it pass where cuts are free")
        void pinwheel() {
            List<Piece> vanes = List.of(new Piece("lying", 600, 300, 2, false), new Piece("standing", 300, 400, 2, false));
            SheetLayout pinwheel = new SheetLayout(SHEET, List.of(
                new Placement("lying", 0, 0, 600, 300, false), new Placement("standing", 600, 0, 300, 400, false),
                new Placement("lying", 300, 400, 600, 300, false), new Placement("standing", 0, 300, 300, 400, false)));
            assertThat(kinds(layout(CutRule.GUILLOTINE, 0, vanes, pinwheel))).containsExactly(Kind.NOT_GUILLOTINE);
            assertThat(kinds(layout(CutRule.FREE, 0, vanes, pinwheel))).isEmpty();
        }
    }
}
