package unthrum.report;

import java.util.Optional;
import unthrum.facts.Duty;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Veto;
import unthrum.facts.Want;
import unthrum.material.Layer;
import unthrum.reasoning.engine.Judgement;

/** How much of a case is shown: all of it, or what concerns one layer. What holds or endangers the panel always is. */
record CaseScope(Optional<Layer> only) {

    boolean admits(Judgement judgement) {
        return only.isEmpty() || concerns(only.get(), judgement);
    }

    boolean admits(Layer layer) {
        return only.isEmpty() || only.get() == layer;
    }

    boolean admitsLadder() {
        return admits(Layer.BARRIER) || admits(Layer.DECOUPLER);
    }

    private static boolean concerns(Layer layer, Judgement judgement) {
        if (judgement.conclusion() instanceof Want want) {
            return want.layer() == layer;
        }
        if (judgement.conclusion() instanceof Veto veto) {
            return layer.matches(veto.layer());
        }
        if (judgement.conclusion() instanceof Limit limit) {
            return layer.matches(limit.layer());
        }
        if (judgement.conclusion() instanceof Pairing pairing) {
            return pairing.layer() == layer || pairing.other() == layer;
        }
        return !(judgement.conclusion() instanceof Duty) || judgement.reasons().stream()
                .flatMap(r -> r.bindings().values().stream())
                .anyMatch(b -> b instanceof Want want && want.layer() == layer);
    }
}
