package unthrum.effect;

import java.util.OptionalDouble;
import java.util.Set;
import unthrum.derive.PanelFacts;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;

/** Heat and wetness of a panel with layers. */
final class HeatGain {

    private final Knowledge knowledge;
    private final Vehicle vehicle;
    private final PanelFacts facts;

    HeatGain(Knowledge knowledge, Vehicle vehicle, PanelFacts facts) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
        this.facts = facts;
    }

    private HeatEffect of(Layup layup) {
        return new HeatEffects(knowledge, vehicle, new Treated(facts, layup, Set.of())).effect();
    }

    OptionalDouble summer(Layup layup) {
        HeatEffect e = of(layup);
        return e.summer().isWithin() ? OptionalDouble.of(e.summer().value().wattsTreated()) : OptionalDouble.empty();
    }

    OptionalDouble winter(Layup layup) {
        HeatEffect e = of(layup);
        return e.winter().isWithin() ? OptionalDouble.of(e.winter().value().wattsTreated()) : OptionalDouble.empty();
    }

    OptionalDouble wet(Layup layup) {
        HeatEffect e = of(layup);
        return e.dew().isWithin() ? OptionalDouble.of(e.dew().value().treated().share()
                * facts.the(unthrum.facts.Panel.class).area()) : OptionalDouble.empty();
    }
}
