package unthrum.plan;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.IntStream;
import unthrum.material.Layer;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;
import unthrum.plan.SharingProblem.Room;
import unthrum.plan.SharingProblem.Use;

/** An answer to a sharing problem: how many pieces of each part of each choice are laid. */
final class Allotment {

    private final SharingProblem problem;
    private final int[][] pieces;

    private Allotment(SharingProblem problem, int[][] pieces) {
        this.problem = problem;
        this.pieces = pieces;
    }

    static Allotment nothing(SharingProblem problem) {
        return new Allotment(problem, problem.choices().stream().map(c -> new int[c.parts().size()])
                .toArray(int[][]::new));
    }

    Allotment with(int choice, int part, int count) {
        int[][] copy = pieces.clone();
        copy[choice] = pieces[choice].clone();
        copy[choice][part] = count;
        return new Allotment(problem, copy);
    }

    int pieces(int choice, int part) {
        return pieces[choice][part];
    }

    boolean lays(int choice) {
        return Arrays.stream(pieces[choice]).anyMatch(n -> n > 0);
    }

    long worth() {
        return sum(c -> true, SharingProblem.Step::worth);
    }

    long area(int goods) {
        return sum(c -> c.goods() == goods, SharingProblem.Step::area);
    }

    long packs(int goods) {
        return problem.goods().get(goods).packsFor(area(goods));
    }

    Use use() {
        long money = 0;
        for (int g = 0; g < problem.goods().size(); g++) {
            money += packs(g) * problem.goods().get(g).price();
        }
        return new Use(money, sum(c -> true, SharingProblem.Step::mass),
                sum(c -> problem.rooms().get(c.room()).roof(), SharingProblem.Step::mass));
    }

    /** What it takes beyond the bounds. */
    Use excess() {
        Use use = use();
        return new Use(Math.max(0, use.money() - problem.bounds().money()),
                Math.max(0, use.mass() - problem.bounds().mass()), Math.max(0, use.roof() - problem.bounds().roof()));
    }

    boolean isOverTheBounds() {
        return !problem.bounds().admit(use());
    }

    /** The thickness of each layer that a panel gets. */
    Map<Layer, Long> layers(int room) {
        Map<Layer, Long> layers = new EnumMap<>(Layer.class);
        for (int i = 0; i < pieces.length; i++) {
            Choice choice = problem.choices().get(i);
            if (choice.room() == room && !choice.isAlone() && lays(i)) {
                layers.put(choice.layer(), choice.thickness());
            }
        }
        return layers;
    }

    /** How many different materials are used; closing pieces do not count. */
    long materials() {
        return IntStream.range(0, pieces.length).filter(i -> !problem.choices().get(i).isAlone()).filter(this::lays)
                .map(i -> problem.choices().get(i).goods()).distinct().count();
    }

    /** Whether every panel takes what it is given: one material a layer, stack, mass and pairings. */
    boolean fitsThePanels() {
        return IntStream.range(0, problem.rooms().size()).allMatch(this::fits);
    }

    private boolean fits(int room) {
        long stack = 0;
        long[] layers = new long[Layer.values().length];
        for (int i = 0; i < pieces.length; i++) {
            Choice choice = problem.choices().get(i);
            if (choice.room() == room && !choice.isAlone() && lays(i)) {
                stack += choice.thickness();
                layers[choice.layer().ordinal()]++;
            }
        }
        Room bounds = problem.rooms().get(room);
        return stack <= bounds.stack() && Arrays.stream(layers).allMatch(n -> n <= 1)
                && sum(c -> c.room() == room && !c.isAlone(), SharingProblem.Step::mass) <= bounds.mass()
                && bounds.pairings().stream().allMatch(p -> p.admits(layers(room).keySet()));
    }

    private long sum(java.util.function.Predicate<Choice> which,
                     java.util.function.ToLongFunction<SharingProblem.Step> what) {
        long sum = 0;
        for (int i = 0; i < pieces.length; i++) {
            Choice choice = problem.choices().get(i);
            if (which.test(choice)) {
                for (int j = 0; j < pieces[i].length; j++) {
                    Part part = choice.parts().get(j);
                    sum += what.applyAsLong(part.at(pieces[i][j]));
                }
            }
        }
        return sum;
    }

    /** What is left of the packs and the shelf. */
    long left(int goods) {
        Goods of = problem.goods().get(goods);
        long shelf = area(goods) > 0 ? of.shelf() : 0;
        return Math.max(0, shelf + packs(goods) * of.pack() - area(goods));
    }
}
