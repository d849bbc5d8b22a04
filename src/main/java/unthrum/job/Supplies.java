package unthrum.job;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import unthrum.facts.Duty.Work;
import unthrum.material.Material;
import unthrum.material.Material.Bonding;
import unthrum.plan.PanelWork;
import unthrum.reasoning.engine.Judgement;

/**
 * What the materials of a step ask for.
 *
 * @param glued  whether a piece is held by contact adhesive
 * @param hot    whether it takes one for high temperatures
 * @param warmth the coldest metal on which all of them grab, in °C; absent where none says
 */
public record Supplies(boolean glued, boolean hot, OptionalDouble warmth) {

    static Supplies of(StepKind kind, List<Task> tasks, List<Judgement> asks) {
        List<Material> materials = tasks.stream().flatMap(t -> Stream.concat(t.layers().stream().map(l -> l.material()),
                t.closings().stream().flatMap(c -> c.piece().stream()))).toList();
        boolean hot = kind.lays() && asks.stream().anyMatch(a -> PanelWork.work(a) == Work.USE_HOT_ADHESIVE);
        return new Supplies(hot || materials.stream().anyMatch(m -> m.bonding() == Bonding.CONTACT_ADHESIVE), hot,
                materials.stream().flatMap(m -> m.bondsFrom().stream()).mapToDouble(t -> t.si()).max());
    }

    Stream<String> adhesive() {
        return glued ? Stream.of(hot ? "high-temperature contact adhesive" : "contact adhesive") : Stream.empty();
    }
}
