package unthrum.cutting;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.NoOverlap2dConstraint;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether blanks fit onto so many equal sheets, as constraints: each lies on one sheet in one of its ways, and no
 * sheet holds more than any {@link Measure} allows. With places added, none overlaps another.
 */
final class FitModel {

    private final CpModel model = new CpModel();
    private final int width;
    private final int height;
    private final int sheets;
    private final List<Raised> blanks;
    /** By blank, way and sheet. */
    private final BoolVar[][][] lies;
    private final IntVar[] x;
    private final IntVar[] y;
    /** The first so many blanks cannot share sheets, so each has its own, in their order. */
    private final int apart;

    FitModel(List<Raised> raised, int width, int height, int sheets) {
        this.width = width;
        this.height = height;
        this.sheets = sheets;
        List<Raised> alone = alone(raised);
        this.apart = alone.size();
        this.blanks = new ArrayList<>(alone);
        raised.stream().filter(r -> alone.stream().noneMatch(a -> a == r)).forEach(blanks::add);
        this.lies = new BoolVar[blanks.size()][][];
        this.x = new IntVar[lies.length];
        this.y = new IntVar[lies.length];
        for (int i = 0; i < lies.length; i++) {
            addBlank(i);
        }
        addMeasures();
    }

    CpModel get() {
        return model;
    }

    private List<Raised> alone(List<Raised> raised) {
        List<Raised> alone = new ArrayList<>();
        for (Raised each : raised) {
            if (alone.stream().noneMatch(a -> a.sharesWith(each, width, height))) {
                alone.add(each);
            }
        }
        return alone;
    }

    /**
     * One sheet and one way. Sheets are alike, so they are numbered by the first blank on them, and copies lie on
     * sheets in their order.
     */
    private void addBlank(int i) {
        int ways = blanks.get(i).ways().size();
        lies[i] = new BoolVar[ways][sheets];
        List<Literal> all = new ArrayList<>();
        for (int way = 0; way < ways; way++) {
            for (int s = 0; s < sheets; s++) {
                lies[i][way][s] = model.newBoolVar("");
                boolean canBe = i < apart ? s == i : s <= i;
                if (canBe) {
                    all.add(lies[i][way][s]);
                } else {
                    model.addEquality(lies[i][way][s], 0);
                }
            }
        }
        model.addExactlyOne(all);
        if (i > apart && blanks.get(i).blank().piece() == blanks.get(i - 1).blank().piece()) {
            model.addLessOrEqual(sheetOf(i - 1), sheetOf(i));
        }
    }

    private LinearExpr sheetOf(int i) {
        LinearExprBuilder sheet = LinearExpr.newBuilder();
        for (BoolVar[] way : lies[i]) {
            for (int s = 0; s < sheets; s++) {
                sheet.addTerm(way[s], s);
            }
        }
        return sheet.build();
    }

    private void addMeasures() {
        for (Measure measure : Measure.telling(blanks, width, height)) {
            for (int s = 0; s < sheets; s++) {
                LinearExprBuilder held = LinearExpr.newBuilder();
                for (int i = 0; i < lies.length; i++) {
                    for (int way = 0; way < lies[i].length; way++) {
                        held.addTerm(lies[i][way][s], measure.of(blanks.get(i).ways().get(way)));
                    }
                }
                model.addLessOrEqual(held, measure.capacity());
            }
        }
    }

    /** Asks for the least height in which all lie, once places are added; the blanks must not be raised along it. */
    void seekLeastHeight() {
        IntVar least = model.newIntVar(0, height, "");
        for (int i = 0; i < lies.length; i++) {
            for (int way = 0; way < lies[i].length; way++) {
                int high = blanks.get(i).ways().get(way)[1];
                for (BoolVar here : lies[i][way]) {
                    model.addGreaterOrEqual(least, LinearExpr.affine(y[i], 1, high)).onlyEnforceIf(here);
                }
            }
        }
        model.minimize(least);
    }

    /** Where each blank lies on its sheet. */
    void addPlaces() {
        for (int i = 0; i < lies.length; i++) {
            x[i] = model.newIntVar(0, width, "");
            y[i] = model.newIntVar(0, height, "");
            for (int way = 0; way < lies[i].length; way++) {
                addRoom(i, way);
            }
        }
        for (int s = 0; s < sheets; s++) {
            addSheet(s);
        }
    }

    /** Inside the sheet; of a sheet and its mirror images one is enough. */
    private void addRoom(int i, int way) {
        int[] size = blanks.get(i).ways().get(way);
        int share = i < Math.max(1, apart) ? 2 : 1;
        for (BoolVar here : lies[i][way]) {
            model.addLessOrEqual(x[i], (width - size[0]) / share).onlyEnforceIf(here);
            model.addLessOrEqual(y[i], (height - size[1]) / share).onlyEnforceIf(here);
        }
    }

    private void addSheet(int s) {
        NoOverlap2dConstraint noOverlap = model.addNoOverlap2D();
        CumulativeConstraint along = model.addCumulative(height);
        CumulativeConstraint across = model.addCumulative(width);
        for (int i = 0; i < lies.length; i++) {
            for (int way = 0; way < lies[i].length; way++) {
                int[] size = blanks.get(i).ways().get(way);
                IntervalVar wide = model.newOptionalFixedSizeIntervalVar(x[i], size[0], lies[i][way][s], "");
                IntervalVar high = model.newOptionalFixedSizeIntervalVar(y[i], size[1], lies[i][way][s], "");
                noOverlap.addRectangle(wide, high);
                along.addDemand(wide, size[1]);
                across.addDemand(high, size[0]);
            }
        }
    }

    /** The layout found: of every sheet what lies on it, in its true size and not loose. */
    List<List<Placed>> read(CpSolver solver) {
        List<List<Placed>> layout = new ArrayList<>();
        for (int s = 0; s < sheets; s++) {
            List<Placed> placed = new ArrayList<>();
            for (int i = 0; i < lies.length; i++) {
                for (int way = 0; way < lies[i].length; way++) {
                    if (solver.booleanValue(lies[i][way][s])) {
                        placed.add(blanks.get(i).placed(way, (int) solver.value(x[i]), (int) solver.value(y[i])));
                    }
                }
            }
            layout.add(Pushed.toTheCorner(placed));
        }
        return layout;
    }
}
