package unthrum.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import unthrum.facts.Pairing.Tie;
import unthrum.material.Layer;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.plan.SharingProblem.Use;

/** A sharing problem as linear constraints over yes and no: is the material laid, and is this piece of it laid? */
final class SharingModel {

    private final CpModel model = new CpModel();
    private final SharingProblem problem;
    private final BoolVar[] laid;
    private final BoolVar[][][] pieces;
    private final List<Under> stacks = new ArrayList<>();
    private final IntVar[] packs;
    private final IntVar[] excess;

    /** A stack that a panel's layers may stay under. */
    private record Under(int room, Map<Layer, Long> thickness, BoolVar chosen) {
    }

    SharingModel(SharingProblem problem, Allotment start) {
        this.problem = problem;
        this.laid = new BoolVar[problem.choices().size()];
        this.pieces = new BoolVar[laid.length][][];
        IntStream.range(0, laid.length).forEach(this::addChoice);
        IntStream.range(0, problem.rooms().size()).forEach(this::addRoom);
        int goods = problem.goods().size();
        this.packs = new IntVar[goods];
        IntStream.range(0, goods).forEach(this::addGoods);
        Use use = start.use();
        this.excess = new IntVar[] {
            bound(money(), problem.bounds().money(), use.money()),
            bound(mass(), problem.bounds().mass(), use.mass()),
            bound(sum(i -> problem.rooms().get(choice(i).room()).roof(), Step::mass), problem.bounds().roof(), use.roof())};
        addRequired();
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

    private Choice choice(int index) {
        return problem.choices().get(index);
    }

    /** The first piece of the only part is the layer itself. */
    private void addChoice(int i) {
        laid[i] = model.newBoolVar("");
        List<Part> parts = choice(i).parts();
        pieces[i] = new BoolVar[parts.size()][];
        for (int j = 0; j < parts.size(); j++) {
            pieces[i][j] = new BoolVar[parts.get(j).steps().size()];
            for (int k = 0; k < pieces[i][j].length; k++) {
                boolean same = parts.size() == 1 && k == 0;
                pieces[i][j][k] = same ? laid[i] : model.newBoolVar("");
                if (!same) {
                    addImplication(pieces[i][j][k], k == 0 ? laid[i] : pieces[i][j][k - 1]);
                }
            }
        }
        if (parts.size() > 1) {
            List<Literal> any = new ArrayList<>(List.of(laid[i].not()));
            Arrays.stream(pieces[i]).forEach(part -> any.add(part[0]));
            model.addBoolOr(any);
        }
    }

    private void addImplication(Literal reason, Literal consequence) {
        model.addBoolOr(new Literal[] {reason.not(), consequence});
    }

    /** Every panel's layers stay under one of the widest stacks it has room for, and none lacks its companion. */
    private void addRoom(int room) {
        Room bounds = problem.rooms().get(room);
        Map<Layer, SortedSet<Long>> offered = new EnumMap<>(Layer.class);
        ofRoom(room).forEach(i -> offered.computeIfAbsent(choice(i).layer(), l -> new TreeSet<>())
                .add(choice(i).thickness()));
        List<Under> under = Stacks.widest(offered, bounds).stream()
                .map(stack -> new Under(room, stack, model.newBoolVar(""))).toList();
        stacks.addAll(under);
        model.addExactlyOne(under.stream().map(Under::chosen).toArray(Literal[]::new));
        offered.forEach((layer, thicknesses) -> thicknesses.forEach(t -> addThickness(room, layer, t, under)));
        bounds.pairings().stream().filter(p -> p.tie() == Tie.NEEDS)
                .forEach(p -> model.addLessOrEqual(layer(room, p.layer(), 0), layer(room, p.other(), 0)));
        if (bounds.mass() < SharingProblem.FREE) {
            model.addLessOrEqual(sum(i -> choice(i).room() == room && !choice(i).isAlone(), Step::mass), bounds.mass());
        }
    }

    /** One material at most of a layer, and that thick only under a stack that lets it be. */
    private void addThickness(int room, Layer layer, long thickness, List<Under> stacks) {
        LinearExprBuilder allowed = LinearExpr.newBuilder();
        stacks.stream().filter(s -> s.thickness().getOrDefault(layer, Long.MIN_VALUE) >= thickness)
                .forEach(s -> allowed.add(s.chosen()));
        model.addLessOrEqual(layer(room, layer, thickness), allowed);
    }

    /** How many materials of a layer a panel gets that are at least so thick. */
    private LinearExprBuilder layer(int room, Layer layer, long thickness) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        ofRoom(room).filter(i -> choice(i).layer() == layer && choice(i).thickness() >= thickness)
                .forEach(i -> sum.add(laid[i]));
        return sum;
    }

    /** Packs and the shelf must give the area; a piece too many is a pack more. */
    private void addGoods(int goods) {
        SharingProblem.Goods of = problem.goods().get(goods);
        long most = problem.choices().stream().filter(c -> c.goods() == goods).flatMap(c -> c.parts().stream())
                .mapToLong(p -> p.whole().area()).sum();
        packs[goods] = model.newIntVar(0, of.packsFor(most), "");
        model.addLessOrEqual(sum(i -> choice(i).goods() == goods, Step::area)
                .addTerm(packs[goods], -of.pack()), of.shelf());
        for (int i = 0; i < laid.length; i++) {
            if (choice(i).goods() == goods && of.shelf() == 0) {
                model.addLessOrEqual(laid[i], packs[goods]);
            }
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

    /** Safety's layers are laid whole, in one material or another. */
    private void addRequired() {
        for (int i = 0; i < laid.length; i++) {
            for (Part part : choice(i).parts()) {
                if (part.required()) {
                    model.addAtLeastOne(covering(choice(i), part));
                }
            }
        }
    }

    private List<Literal> covering(Choice wanted, Part part) {
        List<Literal> covering = new ArrayList<>();
        for (int i = 0; i < laid.length; i++) {
            for (int j = 0; j < pieces[i].length; j++) {
                if (choice(i).room() == wanted.room() && choice(i).layer() == wanted.layer()
                        && choice(i).parts().get(j).place().equals(part.place())) {
                    covering.add(pieces[i][j][pieces[i][j].length - 1]);
                }
            }
        }
        return covering;
    }

    LinearExprBuilder excess() {
        return LinearExpr.newBuilder().addSum(excess);
    }

    /** Less is better, so what is served counts negative. */
    LinearExprBuilder worth() {
        return sum(i -> true, step -> -step.worth());
    }

    LinearExprBuilder money() {
        LinearExprBuilder money = LinearExpr.newBuilder();
        IntStream.range(0, packs.length).forEach(g -> money.addTerm(packs[g], problem.goods().get(g).price()));
        return money;
    }

    LinearExprBuilder mass() {
        return sum(i -> true, Step::mass);
    }

    /** Counts the materials; only the last aim asks, so only then is anything added to the model for it. */
    LinearExprBuilder materials() {
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (int g = 0; g < packs.length; g++) {
            int goods = g;
            BoolVar any = model.newBoolVar("");
            used.add(any);
            IntStream.range(0, laid.length).filter(i -> choice(i).goods() == goods && !choice(i).isAlone())
                    .forEach(i -> addImplication(laid[i], any));
        }
        return used;
    }

    private LinearExprBuilder sum(java.util.function.IntPredicate which, ToLongFunction<Step> what) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int i = 0; i < laid.length; i++) {
            for (int j = 0; which.test(i) && j < pieces[i].length; j++) {
                Part part = choice(i).parts().get(j);
                for (int k = 0; k < pieces[i][j].length; k++) {
                    sum.addTerm(pieces[i][j][k], what.applyAsLong(part.at(k + 1)) - what.applyAsLong(part.at(k)));
                }
            }
        }
        return sum;
    }

    private IntStream ofRoom(int room) {
        return IntStream.range(0, laid.length).filter(i -> choice(i).room() == room && !choice(i).isAlone());
    }

    /** Starts the search from an allotment. */
    void hint(Allotment start) {
        model.clearHints();
        for (int i = 0; i < laid.length; i++) {
            for (int j = 0; j < pieces[i].length; j++) {
                for (int k = 0; k < pieces[i][j].length; k++) {
                    model.addHint(pieces[i][j][k], start.pieces(i, j) > k);
                }
            }
            if (pieces[i].length > 1) {
                model.addHint(laid[i], start.lays(i));
            }
        }
        hintStacks(start);
        for (int g = 0; g < packs.length; g++) {
            model.addHint(packs[g], start.packs(g));
        }
    }

    /** The first stack that covers what the panel gets. */
    private void hintStacks(Allotment start) {
        int covered = -1;
        for (Under under : stacks) {
            boolean first = covered != under.room() && Stacks.covers(under.thickness(), start.layers(under.room()));
            model.addHint(under.chosen(), first);
            covered = first ? under.room() : covered;
        }
    }

    Allotment read(CpSolver solver) {
        Allotment read = Allotment.nothing(problem);
        for (int i = 0; i < laid.length; i++) {
            for (int j = 0; j < pieces[i].length; j++) {
                int count = 0;
                for (BoolVar piece : pieces[i][j]) {
                    count += solver.booleanValue(piece) ? 1 : 0;
                }
                read = read.with(i, j, count);
            }
        }
        return read;
    }
}
