package unthrum.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import unthrum.plan.SharingProblem.Choice;
import unthrum.plan.SharingProblem.Goods;
import unthrum.plan.SharingProblem.Part;

/**
 * Leaves out materials that another one beats everywhere: wherever the one may lie the other may too, is worth as much,
 * is no thicker and no heavier, and any amount of it costs no more. Exchanging them never makes a plan worse, so the
 * search loses nothing. What lies on the shelf always stays.
 */
final class Dominance {

    private final SharingProblem problem;

    private Dominance(SharingProblem problem) {
        this.problem = problem;
    }

    static SharingProblem pruned(SharingProblem problem) {
        Dominance dominance = new Dominance(problem);
        TreeSet<Integer> out = new TreeSet<>();
        for (int g = 0; g < problem.goods().size(); g++) {
            int goods = g;
            boolean beaten = IntStream.range(0, problem.goods().size()).filter(o -> o != goods && !out.contains(o))
                    .anyMatch(o -> dominance.beats(o, goods));
            if (beaten) {
                out.add(g);
            }
        }
        List<Choice> kept = problem.choices().stream().filter(c -> !out.contains(c.goods())).toList();
        return new SharingProblem(problem.rooms(), new ArrayList<>(kept), problem.goods(), problem.bounds());
    }

    private boolean beats(int better, int worse) {
        Goods a = problem.goods().get(better);
        Goods b = problem.goods().get(worse);
        return b.shelf() == 0 && a.price() <= b.price() && a.pack() >= b.pack()
                && problem.choices().stream().filter(c -> c.goods() == worse).allMatch(c -> beats(better, c));
    }

    private boolean beats(int better, Choice worse) {
        Optional<Choice> other = problem.choices().stream().filter(c -> c.goods() == better && c.room() == worse.room()
                && c.layer() == worse.layer() && !c.isAlone()).findFirst();
        return other.isPresent() && other.get().thickness() <= worse.thickness()
                && other.get().parts().size() == worse.parts().size()
                && IntStream.range(0, worse.parts().size())
                        .allMatch(i -> beats(other.get().parts().get(i), worse.parts().get(i)));
    }

    private static boolean beats(Part better, Part worse) {
        return better.steps().size() == worse.steps().size() && IntStream.rangeClosed(1, worse.steps().size())
                .allMatch(n -> better.at(n).worth() >= worse.at(n).worth()
                        && better.at(n).mass() <= worse.at(n).mass() && better.at(n).area() <= worse.at(n).area());
    }
}
