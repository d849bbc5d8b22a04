package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Limit;
import unthrum.material.Layer;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Ladder;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;

/** The wants that no veto defeats and that are not laid all the same, each with what stands in the way. */
final class Unserved {

    private final PanelAdvice advice;
    private final boolean laid;
    private final Sentences sentences;

    Unserved(PlannedPanel planned, Sentences sentences) {
        this.advice = planned.advice();
        this.laid = planned.layup().has(Layer.BARRIER);
        this.sentences = sentences;
    }

    /** One paragraph for each layer, or for several that the same limit rules out. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        if (advice.slight().isPresent()) {
            told.add(GainWords.slight(advice));
            return told;
        }
        Map<Layer, List<WeighedWant>> byLayer = advice.unserved().stream()
                .collect(Collectors.groupingBy(WeighedWant::layer, LinkedHashMap::new, Collectors.toList()));
        Map<List<Judgement>, List<Layer>> ruledOut = new LinkedHashMap<>();
        List<Layer> others = new ArrayList<>();
        for (Layer layer : byLayer.keySet()) {
            Against against = Against.of(layer, advice);
            boolean whollyOut = against.outdone().isEmpty() && against.limits().size() == 1
                    && against.limits().values().iterator().next() == against.offered();
            if (whollyOut) {
                ruledOut.computeIfAbsent(List.copyOf(against.limits().keySet()), k -> new ArrayList<>()).add(layer);
            } else {
                others.add(layer);
            }
        }
        ruledOut.forEach((limits, layers) -> told.add(allOut(limits.get(0), layers.stream().flatMap(
                l -> byLayer.get(l).stream()).toList())));
        others.forEach(layer -> told.add(String.join(" ", piecemeal(layer, byLayer.get(layer)))));
        ladder().ifPresent(told::add);
        return told;
    }

    /** 'damping on bays 1 and 3, a barrier and insulation'. */
    String wanted(List<WeighedWant> wants) {
        Map<Layer, List<WeighedWant>> byLayer = wants.stream()
                .collect(Collectors.groupingBy(WeighedWant::layer, LinkedHashMap::new, Collectors.toList()));
        return English.and(byLayer.entrySet().stream().map(e -> noun(e.getKey(), e.getValue())).toList());
    }

    private String noun(Layer layer, List<WeighedWant> wants) {
        List<String> places = wants.stream().filter(w -> !w.place().isWholePanel())
                .map(w -> sentences.place(w.place())).toList();
        String noun = layer == Layer.SEAL ? "closing" : English.withArticle(layer.word());
        boolean named = places.isEmpty() || places.equals(List.of(PlaceNames.PANEL));
        return named ? noun : noun + (layer == Layer.SEAL ? " " : " on ") + English.andNumbered(places);
    }

    private String allOut(Judgement limit, List<WeighedWant> wants) {
        return English.capital(wanted(wants)) + ": " + LimitWords.of((Limit) limit.conclusion())
                + ", and nothing in the catalogue keeps to that, because " + reasons(limit);
    }

    private List<String> piecemeal(Layer layer, List<WeighedWant> wants) {
        Against against = Against.of(layer, advice);
        List<String> told = new ArrayList<>();
        String lead = English.capital(wanted(wants)) + ": ";
        for (Map.Entry<Judgement, Integer> limit : against.limits().entrySet()) {
            told.add(lead + LimitWords.of((Limit) limit.getKey().conclusion()) + ", which rules out "
                    + limit.getValue() + " of " + against.offered() + ", because " + reasons(limit.getKey()));
            lead = "And ";
        }
        for (Told missing : Told.of(Against.missingCompanions(layer, advice.layup(), advice).stream(), sentences)) {
            told.add(lead + missing.clause() + ". [" + missing.rule().id() + "]");
            lead = "And ";
        }
        if (!against.outdone().isEmpty()) {
            Scored next = against.outdone().get(0).best().orElseThrow();
            told.add((told.isEmpty() ? English.capital(wanted(wants)) + ": " : "") + GainWords.why(next, advice));
        } else if (told.isEmpty()) {
            told.add(lead + "none in the catalogue goes together with the rest inside the limits.");
        }
        return told;
    }

    private String reasons(Judgement limit) {
        List<Told> told = Told.of(Stream.of(limit), sentences);
        return told.get(0).clause() + ". [" + told.get(0).rule().id() + "]";
    }

    private Optional<String> ladder() {
        if (advice.ladder().isEmpty()) {
            return Optional.empty();
        }
        Ladder ladder = advice.ladder().get();
        Layup layup = advice.layup();
        if (layup.has(Layer.BARRIER) && layup.has(Layer.DECOUPLER)) {
            return Optional.empty();
        }
        if (!layup.has(Layer.BARRIER)) {
            return Optional.of(noBarrier(ladder));
        }
        if (ladder.decoupledBarrier().isEmpty()) {
            return Optional.of((isLeft(Layer.DECOUPLER) ? "No barrier on foam fits" + room(ladder)
                    : "No foam may lie under the barrier") + ", so the barrier " + (laid ? "lies" : "would lie")
                    + " straight on the skin.");
        }
        return Optional.of("On foam the best would be " + floated(ladder.decoupledBarrier().get()));
    }

    private String floated(Scored floated) {
        return LayupWords.names(floated.layup()) + ": " + GainWords.share(floated.gain()) + " " + GainWords.ALL
                + " (computed, not measured); what is laid takes " + GainWords.share(advice.laid().gain()) + ".";
    }

    private String noBarrier(Ladder ladder) {
        if (!isLeft(Layer.BARRIER)) {
            return "So no barrier lies here: what comes through the air stays.";
        }
        Optional<Scored> direct = ladder.barrierLaidDirect();
        return direct.isPresent() ? "A barrier would fit" + room(ladder) + ", but " + GainWords.clause(direct.get(), advice.laid(), advice.isOfTheJob())
                : "No barrier fits" + room(ladder) + ", on foam or laid direct: what comes through the air stays.";
    }

    /** Whether a material of the layer is left that nothing but want of room rules out. */
    private boolean isLeft(Layer layer) {
        return advice.considered().stream().anyMatch(c -> c.material().layer() == layer && c.rejectedBy().stream()
                .allMatch(j -> ((Limit) j.conclusion()).bound() == Limit.Bound.LAYER_THICKNESS));
    }

    private static String room(Ladder ladder) {
        return ladder.room().isPresent() ? " in the " + Amounts.length(ladder.room().getAsDouble())
                + " that the limits leave" : " inside the limits";
    }
}
