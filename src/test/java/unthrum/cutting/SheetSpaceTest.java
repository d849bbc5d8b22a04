package unthrum.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;

/** A sheet being filled at random, with free and with guillotine cuts, clean or with a stain. */
@DisplayName("A sheet being filled")
class SheetSpaceTest {

    private static final int WIDTH = 30;
    private static final int HEIGHT = 20;
    private static final int LONGEST = 12;

    @Property(tries = 300)
    @Label("covers a blank as a whole where it has a place for it, and only there")
    void coversWhatFits(@ForAll CutRule cuts, @ForAll boolean stained, @ForAll @IntRange(max = 8) int blanks,
                        @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SheetSpace sheet = filled(cuts, stained, blanks, random);
        Blank next = anyBlank(random);
        assertThat(sheet.covers(next)).isLessThanOrEqualTo(next.area());
        assertThat(sheet.covers(next) == next.area()).isEqualTo(spot(sheet, next, random).found());
    }

    @Property(tries = 300)
    @Label("for free cuts keeps a place only while it is free, and then offers the new ones beside it")
    void keepsWhatIsFree(@ForAll @IntRange(max = 8) int blanks, @ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SheetSpace sheet = filled(CutRule.FREE, false, blanks, random);
        Blank first = anyBlank(random);
        Blank second = anyBlank(random);
        Spot kept = spot(sheet, second, random);
        Spot taken = spot(sheet, first, random);
        if (!taken.found() || !kept.found()) {
            return;
        }
        sheet.place(first, taken);
        if (sheet.stillOffers(kept)) {
            sheet.offerNew(second, FitRule.SHORT_SIDE, random, kept);
            sheet.place(second, kept);
            assertThat(sheet.placed()).isNotEmpty().allSatisfy(p -> {
                assertThat(p.right()).isLessThanOrEqualTo(WIDTH);
                assertThat(p.top()).isLessThanOrEqualTo(HEIGHT);
                assertThat(sheet.placed().stream().filter(o -> o != p && overlap(p, o))).isEmpty();
            });
        }
    }

    private static boolean overlap(Placed a, Placed b) {
        return a.x() < b.right() && b.x() < a.right() && a.y() < b.top() && b.y() < a.top();
    }

    private static SheetSpace filled(CutRule cuts, boolean stained, int blanks, SplittableRandom random) {
        List<Defect> defects = stained ? List.of(new Defect(7, 5, 4, 6)) : List.of();
        Stock stock = new Stock("sheet", WIDTH, HEIGHT, 1, Stock.Kind.SHEET, defects);
        SheetSpace sheet = SheetSpace.blank(stock, cuts, 0);
        for (int i = 0; i < blanks; i++) {
            Blank blank = anyBlank(random);
            Spot spot = spot(sheet, blank, random);
            if (spot.found()) {
                sheet.place(blank, spot);
            }
        }
        return sheet;
    }

    /** A place if there is one: asked again, since a place may be overlooked at random. */
    private static Spot spot(SheetSpace sheet, Blank blank, SplittableRandom random) {
        Spot spot = new Spot();
        for (int i = 0; i < 10; i++) {
            sheet.offer(blank, FitRule.SHORT_SIDE, random, spot);
        }
        return spot;
    }

    private static Blank anyBlank(SplittableRandom random) {
        return new Blank(0, 1 + random.nextInt(LONGEST), 1 + random.nextInt(LONGEST), random.nextBoolean());
    }
}
