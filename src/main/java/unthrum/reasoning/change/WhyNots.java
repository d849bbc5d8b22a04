package unthrum.reasoning.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.facts.AimedAt;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Opening;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.knowledge.RuleCard;
import unthrum.material.Layer;
import unthrum.reasoning.Considered;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Silence;
import unthrum.reasoning.engine.Silence.Outcome;

/** Finds for every layer that a panel does not get the cause. */
public final class WhyNots {

    private static final Set<String> GIVEN = Set.of("zone", "kind");

    private final PanelTrial trial;
    private final PanelAdvice advice;

    public WhyNots(PanelTrial trial, PanelAdvice advice) {
        this.trial = trial;
        this.advice = advice;
    }

    /** One answer for each layer at each place that does not get it, in the order of the layers. */
    public List<WhyNot> all() {
        Set<Spot> got = unthrum.reasoning.change.Outcome.of(advice).spots();
        return Stream.of(Layer.values()).filter(l -> l != Layer.ANY)
                .flatMap(layer -> places(layer).map(place -> new Spot(layer, place)))
                .filter(spot -> !got.contains(spot)).map(this::of).toList();
    }

    /** Damping is judged bay by bay, closing hole by hole, everything else on the whole panel. */
    private Stream<Place> places(Layer layer) {
        return switch (layer) {
            case DAMPING -> advice.panel().facts().all(Bay.class).map(Bay::place);
            case SEAL -> advice.panel().facts().all(Opening.class).map(Opening::place);
            default -> Stream.of(Place.of(advice.name()));
        };
    }

    /** Why the layer is not there. */
    public WhyNot of(Spot spot) {
        Layer layer = spot.layer();
        Place place = spot.place();
        Optional<WeighedWant> want = advice.wants().stream()
                .filter(w -> w.layer() == layer && w.place().equals(place)).findFirst();
        if (want.isEmpty()) {
            return new WhyNot.NobodyAsks(layer, place, silences(layer, place));
        }
        if (!want.get().stands()) {
            return new WhyNot.Outvoted(layer, place, want.get());
        }
        return advice.verdict() == Verdict.HOLD ? new WhyNot.Waits(layer, place, advice.holds())
                : notChosen(layer, place);
    }

    private WhyNot notChosen(Layer layer, Place place) {
        List<Considered> candidates = advice.considered().stream().filter(c -> c.material().layer() == layer).toList();
        Optional<Scored> with = candidates.stream().flatMap(c -> c.best().stream()).findFirst();
        if (with.isPresent()) {
            return new WhyNot.Outdone(layer, place, with.get(), advice.best());
        }
        List<Considered> able = candidates.stream().filter(c -> c.rejectedBy().isEmpty()).toList();
        return able.isEmpty() ? new WhyNot.Rejected(layer, place, candidates)
                : new WhyNot.Alone(layer, place, candidates, ties(layer));
    }

    private List<Silence> silences(Layer layer, Place place) {
        List<Silence> all = new ArrayList<>();
        for (RuleCard rule : trial.wanting(layer)) {
            trial.silences(rule.name(), advice.panel().facts(), place).stream().findFirst().ifPresent(all::add);
        }
        all.sort(Comparator.comparingLong(Silence::failures).thenComparingLong(WhyNots::given)
                .thenComparing(s -> s.rule().id()));
        return all;
    }

    /** How many of its failed conditions nobody can turn: which panel it is and what the client is after. */
    private static long given(Silence silence) {
        return silence.conditions().stream().filter(l -> l.outcome() != Outcome.HELD)
                .filter(l -> l.found().filter(AimedAt.class::isInstance).isPresent()
                        || l.values().stream().anyMatch(v -> GIVEN.contains(v.component()))).count();
    }

    /** What binds layers to each other: the pairings of the layer, and the limits on the panel's whole stack. */
    private List<Judgement> ties(Layer layer) {
        return advice.panel().judgements().stream().filter(j -> j.conclusion() instanceof Pairing pairing
                && (pairing.layer() == layer || pairing.other() == layer)
                || j.conclusion() instanceof Limit limit && !limit.place().isVehicle()
                && (limit.bound() == Bound.STACK_THICKNESS || limit.bound() == Bound.MASS)).toList();
    }
}
