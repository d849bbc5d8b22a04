package unthrum.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import unthrum.plan.SharingProblem.Damping;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Hole;
import unthrum.plan.SharingProblem.Offer;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Step;
import unthrum.plan.SharingProblem.Take;

/** One panel of the model. Offers whose damping is the same in every figure share the yes and no of its pieces. */
final class RoomModel {

    private final CpModel model;
    private final Room room;
    private final BoolVar[] offers;
    private final BoolVar[] holes;
    private final Map<Damping, Pieces> dampings = new LinkedHashMap<>();

    /** The pieces of a damping, part by part, and which offers have it. */
    private record Pieces(List<Integer> offers, BoolVar[][] laid) {
    }

    RoomModel(CpModel model, Room room) {
        this.model = model;
        this.room = room;
        this.offers = literals(room.offers().size());
        this.holes = literals(room.holes().size());
        for (int i = 0; i < offers.length; i++) {
            Damping damping = offer(i).damping();
            if (!damping.parts().isEmpty()) {
                dampings.computeIfAbsent(damping, d -> new Pieces(new ArrayList<>(), d.parts().stream()
                        .map(p -> literals(p.steps().size())).toArray(BoolVar[][]::new))).offers.add(i);
            }
        }
        if (room.required()) {
            model.addExactlyOne(offers);
        } else if (offers.length > 0) {
            model.addAtMostOne(offers);
        }
        dampings.forEach(this::addPieces);
        IntStream.range(0, holes.length).filter(h -> room.holes().get(h).required())
                .forEach(h -> model.addBoolOr(new Literal[] {holes[h]}));
        if (room.mass() < SharingProblem.FREE) {
            LinearExprBuilder mass = LinearExpr.newBuilder();
            addMass(mass);
            model.addLessOrEqual(mass, room.mass());
        }
    }

    private BoolVar[] literals(int count) {
        return IntStream.range(0, count).mapToObj(i -> model.newBoolVar("")).toArray(BoolVar[]::new);
    }

    private Offer offer(int index) {
        return room.offers().get(index);
    }

    Room room() {
        return room;
    }

    /** No piece before the one within, and none without an offer that has it; what safety asks for comes with it. */
    private void addPieces(Damping damping, Pieces pieces) {
        for (int j = 0; j < pieces.laid.length; j++) {
            BoolVar[] part = pieces.laid[j];
            model.addLessOrEqual(part[0], taken(pieces));
            for (int k = 1; k < part.length; k++) {
                model.addBoolOr(new Literal[] {part[k].not(), part[k - 1]});
            }
            if (damping.parts().get(j).required()) {
                model.addLessOrEqual(taken(pieces), part[part.length - 1]);
            }
        }
    }

    private LinearExprBuilder taken(Pieces pieces) {
        LinearExprBuilder taken = LinearExpr.newBuilder();
        pieces.offers.forEach(i -> taken.add(offers[i]));
        return taken;
    }

    /** Adds the area that these goods cover here, holes among it; the most that it can be. */
    long addArea(LinearExprBuilder sum, int goods) {
        long most = addLaidArea(sum, goods);
        for (int h = 0; h < holes.length; h++) {
            Hole hole = room.holes().get(h);
            if (hole.goods() == goods) {
                sum.addTerm(holes[h], hole.count());
                most += hole.count();
            }
        }
        return most;
    }

    long addLaidArea(LinearExprBuilder sum, int goods) {
        long most = 0;
        for (int i = 0; i < offers.length; i++) {
            for (Take take : offer(i).cover()) {
                if (take.goods() == goods) {
                    sum.addTerm(offers[i], take.area());
                    most = Math.max(most, take.area());
                }
            }
        }
        for (Map.Entry<Damping, Pieces> damping : dampings.entrySet()) {
            if (damping.getKey().goods() == goods) {
                addSteps(sum, damping.getKey(), damping.getValue(), Step::area, 1);
                most = Math.max(most, damping.getKey().parts().stream().mapToLong(p -> p.whole().area()).sum());
            }
        }
        return most;
    }

    private static void addSteps(LinearExprBuilder sum, Damping damping, Pieces pieces,
                                 ToLongFunction<Step> what, long sign) {
        for (int j = 0; j < pieces.laid.length; j++) {
            Part part = damping.parts().get(j);
            for (int k = 0; k < pieces.laid[j].length; k++) {
                sum.addTerm(pieces.laid[j][k],
                        sign * (what.applyAsLong(part.at(k + 1)) - what.applyAsLong(part.at(k))));
            }
        }
    }

    /** What does not lie on the shelf takes a pack at the least: the solver need not find that out. */
    void addBought(int goods, IntVar packs) {
        LinearExprBuilder covering = LinearExpr.newBuilder();
        boolean any = false;
        for (int i = 0; i < offers.length; i++) {
            if (offer(i).cover().stream().anyMatch(t -> t.goods() == goods)) {
                covering.add(offers[i]);
                any = true;
            }
        }
        if (any) {
            model.addLessOrEqual(covering, packs);
        }
        dampings.forEach((damping, pieces) -> {
            for (int j = 0; damping.goods() == goods && j < pieces.laid.length; j++) {
                model.addLessOrEqual(pieces.laid[j][0], packs);
            }
        });
        for (int h = 0; h < holes.length; h++) {
            if (room.holes().get(h).goods() == goods) {
                model.addLessOrEqual(holes[h], packs);
            }
        }
    }

    void addWorth(LinearExprBuilder sum, long sign) {
        addLaidWorth(sum, sign);
        for (int h = 0; h < holes.length; h++) {
            sum.addTerm(holes[h], sign * room.holes().get(h).worth());
        }
    }

    private void addLaidWorth(LinearExprBuilder sum, long sign) {
        for (int i = 0; i < offers.length; i++) {
            sum.addTerm(offers[i], sign * offer(i).worth());
        }
        dampings.forEach((damping, pieces) -> addSteps(sum, damping, pieces, Step::worth, sign));
    }

    /** No less gain and no more mass than by the allotment; the holes as they are there. */
    void hold(Allotment allotment, int at) {
        for (int h = 0; h < holes.length; h++) {
            model.addEquality(holes[h], allotment.closes(at, h) ? 1 : 0);
        }
        LinearExprBuilder worth = LinearExpr.newBuilder();
        addLaidWorth(worth, 1);
        model.addGreaterOrEqual(worth, allotment.worth(at));
        LinearExprBuilder mass = LinearExpr.newBuilder();
        addMass(mass);
        model.addLessOrEqual(mass, allotment.mass(at));
    }

    void addMass(LinearExprBuilder sum) {
        for (int i = 0; i < offers.length; i++) {
            sum.addTerm(offers[i], offer(i).cover().stream().mapToLong(Take::mass).sum());
        }
        dampings.forEach((damping, pieces) -> addSteps(sum, damping, pieces, Step::mass, 1));
    }

    void addThickness(LinearExprBuilder sum) {
        for (int i = 0; i < offers.length; i++) {
            sum.addTerm(offers[i], offer(i).thickness());
        }
    }

    private void addFirst(Pieces pieces, BoolVar any) {
        for (BoolVar[] part : pieces.laid) {
            model.addBoolOr(new Literal[] {part[0].not(), any});
        }
    }

    /** Where these goods are laid, so is any of them. */
    void addUsed(int goods, BoolVar any) {
        for (int i = 0; i < offers.length; i++) {
            if (offer(i).cover().stream().anyMatch(t -> t.goods() == goods)) {
                model.addBoolOr(new Literal[] {offers[i].not(), any});
            }
        }
        dampings.forEach((damping, pieces) -> {
            if (damping.goods() == goods) {
                addFirst(pieces, any);
            }
        });
    }

    void hint(Allotment start, int at) {
        for (int i = 0; i < offers.length; i++) {
            model.addHint(offers[i], start.offer(at) == i);
        }
        dampings.forEach((damping, pieces) -> {
            boolean taken = pieces.offers.contains(start.offer(at));
            for (int j = 0; j < pieces.laid.length; j++) {
                for (int k = 0; k < pieces.laid[j].length; k++) {
                    model.addHint(pieces.laid[j][k], taken && start.pieces(at)[j] > k);
                }
            }
        });
        for (int h = 0; h < holes.length; h++) {
            model.addHint(holes[h], start.closes(at, h));
        }
    }

    Allotment read(CpSolver solver, Allotment from, int at) {
        Allotment read = from;
        for (int i = 0; i < offers.length; i++) {
            if (solver.booleanValue(offers[i])) {
                Pieces pieces = dampings.get(offer(i).damping());
                read = read.with(at, i, pieces == null ? new int[0] : IntStream.range(0, pieces.laid.length)
                        .map(j -> count(solver, pieces.laid[j])).toArray());
            }
        }
        for (int h = 0; h < holes.length; h++) {
            read = solver.booleanValue(holes[h]) ? read.closing(at, h) : read;
        }
        return read;
    }

    private static int count(CpSolver solver, BoolVar[] part) {
        int count = 0;
        for (BoolVar piece : part) {
            count += solver.booleanValue(piece) ? 1 : 0;
        }
        return count;
    }
}
