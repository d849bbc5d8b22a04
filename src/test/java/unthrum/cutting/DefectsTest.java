package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Sheets and offcuts with defects")
class DefectsTest {

    private static final Search SHORT = Search.ofSteps(1, 2000);
    private static final Defect STAIN = new Defect(40, 40, 20, 20);

    private static Stock stained() {
        return Stock.offcut("offcut", 100, 100).with(List.of(STAIN));
    }

    private static CuttingLayout plan(Piece piece, Stock stock, CutRule cuts, int margin) {
        CuttingLayout layout = LayoutPlanner.plan(new CuttingTask(List.of(piece), List.of(stock), cuts, margin), SHORT);
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        return layout;
    }

    @ParameterizedTest
    @EnumSource(CutRule.class)
    @DisplayName("are used up to the very edge of the stain, without a knife margin there")
    void besideTheStain(CutRule cuts) {
        assertThat(plan(new Piece("strip", 40, 100, 2, false), stained(), cuts, 5).unplaced()).isEmpty();
        assertThat(plan(new Piece("strip", 41, 100, 1, false), stained(), cuts, 5).unplaced()).hasSize(1);
    }

    @Test
    @DisplayName("take four pieces round a stain with free cuts, two of them with edge-to-edge cuts")
    void roundTheStain() {
        Piece vane = new Piece("vane", 60, 40, 4, true);
        assertThat(plan(vane, stained(), CutRule.FREE, 0).unplaced()).isEmpty();
        assertThat(plan(vane, stained(), CutRule.GUILLOTINE, 0).unplaced()).isNotEmpty();
    }

    @Test
    @DisplayName("with a corner cut off give what an L gives")
    void corner() {
        Stock cornerless = Stock.offcut("offcut", 100, 100).with(List.of(new Defect(60, 70, 40, 30)));
        assertThat(plan(new Piece("wide", 100, 70, 1, false), cornerless, CutRule.GUILLOTINE, 3).unplaced()).isEmpty();
        assertThat(plan(new Piece("high", 60, 100, 1, false), cornerless, CutRule.GUILLOTINE, 3).unplaced()).isEmpty();
        assertThat(plan(new Piece("both", 61, 71, 1, false), cornerless, CutRule.FREE, 3).task().tooLarge()).hasSize(1);
    }

    @Test
    @DisplayName("leave no offcut across the stain")
    void offcut() {
        SheetLayout sheet = new SheetLayout(stained(), List.of(new Placement("strip", 0, 0, 30, 10, false)));
        assertThat(sheet.offcutArea(0)).isEqualTo(100 * 40);
    }

    @Test
    @DisplayName("are checked: a piece a tenth of a millimetre over the stain is a fault, one beside it is none")
    void checked() {
        CuttingTask task = new CuttingTask(List.of(new Piece("strip", 40, 50, 1, false)), List.of(stained()),
            CutRule.FREE, 0);
        for (int x = 0; x <= 1; x++) {
            CuttingLayout layout = new CuttingLayout(task, List.of(new SheetLayout(stained(),
                List.of(new Placement("strip", x, 30, 40, 50, false)))), List.of(), 0);
            assertThat(LayoutCheck.faults(layout).stream().map(LayoutCheck.Fault::kind))
                .containsExactlyElementsOf(x == 0 ? List.of() : List.of(LayoutCheck.Kind.ON_DEFECT));
        }
    }

    @Test
    @DisplayName("carry none beyond their edges, and rolls none at all")
    void refused() {
        assertThatThrownBy(() -> Stock.offcut("offcut", 50, 100).with(List.of(STAIN))).hasMessageContaining("offcut");
        assertThatThrownBy(() -> Stock.roll("roll", 100).with(List.of(STAIN))).hasMessageContaining("roll");
    }

    @Provide
    Arbitrary<CuttingTask> tasks() {
        Arbitrary<Integer> side = Arbitraries.integers().between(3, 80);
        Arbitrary<List<Defect>> defects = Combinators.combine(Arbitraries.integers().between(0, 90),
            Arbitraries.integers().between(0, 60), Arbitraries.integers().between(1, 30),
            Arbitraries.integers().between(1, 30)).as(Defect::new).list().ofMaxSize(3);
        return Combinators.combine(side, side, Arbitraries.integers().between(1, 6), Arbitraries.of(CutRule.class),
            Arbitraries.integers().between(0, 6), defects, defects).as((w, h, count, cuts, margin, some, others) ->
            new CuttingTask(List.of(new Piece("a", w, h, count, true), new Piece("b", h / 2 + 1, w / 3 + 1, 3, false)),
                List.of(Stock.sheets("sheet", 120, 90, 2).with(some), Stock.offcut("offcut", 120, 90).with(others),
                    Stock.sheets("small", 120, 90, 2).with(others)), cuts, margin));
    }

    @Property(tries = 150)
    void everyLayoutPassesTheCheck(@ForAll("tasks") CuttingTask task) {
        CuttingLayout layout = LayoutPlanner.plan(task, Search.ofSteps(3, 300));
        assertThat(LayoutCheck.faults(layout)).isEmpty();
        assertThat(layout).isEqualTo(LayoutPlanner.plan(task, Search.ofSteps(3, 300)));
    }

    @Property(tries = 150)
    void withFreeCutsAPieceIsLeftOverOnlyIfNoStockIsLeftForIt(@ForAll("tasks") CuttingTask task) {
        List<Piece> one = List.of(new Piece("a", task.pieces().get(0).width(), task.pieces().get(0).height(), 1, true));
        CuttingTask alone = new CuttingTask(one, task.stock(), CutRule.FREE, task.knifeMargin());
        CuttingLayout layout = LayoutPlanner.plan(alone, Search.ofSteps(3, 300));
        assertThat(layout.unplaced()).isEqualTo(alone.tooLarge());
    }
}
