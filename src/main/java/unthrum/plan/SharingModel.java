package unthrum.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Use;

/** A sharing problem as linear constraints over yes and no: is the offer taken, and is this piece of it laid? */
final class SharingModel {

    private final CpModel model = new CpModel();
    private final SharingProblem problem;
    private final List<RoomModel> rooms;
    private final IntVar[] packs;
    private final IntVar[] excess;

    SharingModel(SharingProblem problem, Allotment start) {
        this.problem = problem;
        this.rooms = problem.rooms().stream().map(r -> new RoomModel(model, r)).toList();
        int goods = problem.goods().size();
        this.packs = new IntVar[goods];
        IntStream.range(0, goods).forEach(this::addGoods);
        Use use = start.use();
        this.excess = new IntVar[] {
            bound(money(), problem.bounds().money(), use.money()),
            bound(mass(), problem.bounds().mass(), use.mass()),
            bound(roof(), problem.bounds().roof(), use.roof())};
    }

    CpModel get() {
        return model;
    }

    /** The variable that counts the packs of these goods. */
    int packIndex(int goods) {
        return packs[goods].getIndex();
    }

    long packPrice(int goods) {
        return problem.goods().get(goods).price();
    }

    long[] mostPacks() {
        return Arrays.stream(packs).mapToLong(p -> p.getDomain().max()).toArray();
    }

    /** No more packs from here on than the allotment needs. */
    void holdPacks(Allotment allotment) {
        IntStream.range(0, packs.length).forEach(g -> model.addLessOrEqual(packs[g], allotment.packs(g)));
    }

    /** No panel gains less or bears more from here on than by the allotment. */
    void holdPanels(Allotment allotment) {
        for (int room = 0; room < rooms.size(); room++) {
            rooms.get(room).hold(allotment, room);
        }
    }

    /** Packs and the shelf must give the area; a piece too many is a pack more. */
    private void addGoods(int goods) {
        Goods of = problem.goods().get(goods);
        LinearExprBuilder area = LinearExpr.newBuilder();
        long most = rooms.stream().mapToLong(r -> r.addArea(area, goods)).sum();
        packs[goods] = model.newIntVar(0, of.packsFor(most), "");
        model.addLessOrEqual(area.addTerm(packs[goods], -of.pack()), of.shelf());
        if (of.shelf() == 0) {
            rooms.forEach(r -> r.addBought(goods, packs[goods]));
        }
    }

    /** Holds a sum to a bound, which may be exceeded no further than the start exceeds it for safety's sake. */
    private IntVar bound(LinearExprBuilder sum, long bound, long start) {
        IntVar beyond = model.newIntVar(0, bound < SharingProblem.FREE ? Math.max(0, start - bound) : 0, "");
        if (bound < SharingProblem.FREE) {
            model.addLessOrEqual(sum.addTerm(beyond, -1), bound);
        }
        return beyond;
    }

    LinearExprBuilder excess() {
        return LinearExpr.newBuilder().addSum(excess);
    }

    /** Less is better, so what is served counts negative, and what packs would have to bring counts against it. */
    LinearExprBuilder net() {
        LinearExprBuilder net = LinearExpr.newBuilder();
        rooms.forEach(r -> r.addWorth(net, -1));
        IntStream.range(0, packs.length).forEach(g -> net.addTerm(packs[g], problem.goods().get(g).asks()));
        return net;
    }

    LinearExprBuilder money() {
        LinearExprBuilder money = LinearExpr.newBuilder();
        IntStream.range(0, packs.length).forEach(g -> money.addTerm(packs[g], problem.goods().get(g).price()));
        return money;
    }

    private LinearExprBuilder mass() {
        LinearExprBuilder mass = LinearExpr.newBuilder();
        rooms.forEach(r -> r.addMass(mass));
        return mass;
    }

    private LinearExprBuilder roof() {
        LinearExprBuilder mass = LinearExpr.newBuilder();
        rooms.stream().filter(r -> r.room().roof()).forEach(r -> r.addMass(mass));
        return mass;
    }

    LinearExprBuilder thickness() {
        LinearExprBuilder thickness = LinearExpr.newBuilder();
        rooms.forEach(r -> r.addThickness(thickness));
        return thickness;
    }

    /** The area of what does not lie on the shelf. */
    LinearExprBuilder fresh() {
        LinearExprBuilder area = LinearExpr.newBuilder();
        IntStream.range(0, packs.length).filter(g -> problem.goods().get(g).shelf() == 0)
                .forEach(g -> rooms.forEach(r -> r.addLaidArea(area, g)));
        return area;
    }

    /** Counts the materials; only the last aim asks, so only then is anything added to the model for it. */
    LinearExprBuilder materials() {
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (int g = 0; g < packs.length; g++) {
            BoolVar any = model.newBoolVar("");
            int goods = g;
            used.add(any);
            rooms.forEach(r -> r.addUsed(goods, any));
        }
        return used;
    }

    /** Starts the search from an allotment. */
    void hint(Allotment start) {
        model.clearHints();
        for (int room = 0; room < rooms.size(); room++) {
            rooms.get(room).hint(start, room);
        }
        for (int g = 0; g < packs.length; g++) {
            model.addHint(packs[g], start.packs(g));
        }
    }

    Allotment read(CpSolver solver) {
        Allotment read = Allotment.nothing(problem);
        for (int room = 0; room < rooms.size(); room++) {
            read = rooms.get(room).read(solver, read, room);
        }
        return read;
    }
}
