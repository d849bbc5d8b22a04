package unthrum.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.drill.Choice;
import unthrum.drill.Exercise;
import unthrum.drill.Ground;
import unthrum.drill.Mark;
import unthrum.drill.Result;
import unthrum.drill.Spoken;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.material.Layer;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.change.Spot;
import unthrum.reasoning.change.WhyNot;
import unthrum.reasoning.engine.Reason;

/** A marked answer: what it came to, and each miss with the panel's numbers and what the rule teaches. */
final class MarkText {

    private static final int INDENT = 2;

    private final Mark mark;
    private final Exercise exercise;
    private final Page page;
    private final Sentences sentences;
    private final WhyNotWords whyNots;
    private final Set<RuleCard> taught = new HashSet<>();

    MarkText(Mark mark, Knowledge knowledge, Page page) {
        this.mark = mark;
        this.exercise = mark.exercise();
        this.page = page;
        this.sentences = new Sentences(PlaceNames.on(exercise.advice().panel().facts()));
        this.whyNots = new WhyNotWords(sentences, knowledge);
    }

    void print() {
        page.title(switch (mark.result()) {
            case RIGHT -> "Right.";
            case WRONG_REASON -> "Right, for the wrong reason.";
            case WRONG -> "Wrong.";
        });
        if (mark.result() == Result.WRONG) {
            page.paragraph(INDENT, "The case: " + Spoken.of(exercise.outcome(), exercise) + ".");
        }
        verdict();
        byLayer(mark.missed()).forEach((layer, places) -> missed(layer, places));
        if (exercise.outcome().verdict() != Verdict.HOLD) {
            beside();
        }
        mark.unsaid().forEach(this::unsaid);
        mark.untrue().forEach(this::untrue);
        held();
        cautions();
    }

    private static Map<Layer, List<Place>> byLayer(SortedSet<Spot> spots) {
        return spots.stream().collect(Collectors.groupingBy(Spot::layer, TreeMap::new,
                Collectors.mapping(Spot::place, Collectors.toList())));
    }

    private void verdict() {
        if (!mark.verdictDiffers()) {
            return;
        }
        Verdict own = exercise.outcome().verdict();
        Verdict said = mark.answer().outcome().verdict();
        if (own == Verdict.HOLD || own == Verdict.ASK) {
            page.paragraph(INDENT, own == Verdict.HOLD ? "The panel waits:" : "A measurement decides first:");
            ground(Optional.empty()).forEach(this::told);
        } else if (said == Verdict.HOLD) {
            page.paragraph(INDENT, "Nothing makes this panel wait: it can be reached and prepared.");
        } else if (said == Verdict.ASK) {
            page.paragraph(INDENT, "No measurement is needed: what is known decides.");
        }
    }

    private void missed(Layer layer, List<Place> places) {
        String where = English.andNumbered(places.stream().map(sentences::place).toList());
        page.paragraph(INDENT, layer == Layer.SEAL ? English.capital(where) + " must be sealed:"
                : "Missing: " + layer.word() + " on " + where + ".");
        ground(Optional.of(layer)).forEach(this::told);
    }

    /**
     * Layers that nothing asks for; then those that must not be there, together where the same rules keep them away.
     */
    private void beside() {
        Map<List<Reason>, List<String>> kept = new LinkedHashMap<>();
        for (Spot spot : mark.beside()) {
            WhyNot why = exercise.whyNot(spot).orElseThrow();
            List<Reason> against = exercise.against(spot);
            if (against.isEmpty()) {
                page.paragraph(INDENT, whyNots.of(why));
                mark.against(spot).stream().limit(1).forEach(this::teach);
            } else {
                kept.computeIfAbsent(against, k -> new ArrayList<>()).add(whyNots.what(why));
            }
        }
        kept.forEach((against, layers) -> {
            page.paragraph(INDENT, "No " + String.join(", no ", layers) + ":");
            against.forEach(reason -> {
                said(reason);
                teach(reason.rule());
            });
        });
    }

    private void unsaid(Ground ground) {
        if (offered(ground).allMatch(r -> taught.contains(r.rule()))) {
            return;
        }
        page.paragraph(INDENT, "No reason that holds was named for " + ground.layer()
                .map(l -> l == Layer.SEAL ? "the sealing" : "the " + l.word()).orElse(what()) + ":");
        told(ground);
    }

    private String what() {
        return switch (exercise.outcome().verdict()) {
            case HOLD -> "the waiting";
            case ASK -> "the measuring";
            default -> "its staying bare";
        };
    }

    private void untrue(Choice.Untrue choice) {
        page.paragraph(INDENT, "Reason " + exercise.number(choice) + " does not hold here, '" + choice.rule().name()
                + "': " + whyNots.wouldNeed(choice.silence()));
        teach(choice.rule());
    }

    /** What was named and holds, with the panel's numbers. */
    private void held() {
        List<Reason> named = mark.answer().why().stream().map(n -> exercise.choices().get(n - 1))
                .filter(Choice.True.class::isInstance).map(c -> ((Choice.True) c).reason()).toList();
        if (!named.isEmpty()) {
            page.paragraph(INDENT, "Named and so:");
            named.forEach(this::said);
        }
    }

    private void cautions() {
        List<Told> cautions = Told.of(exercise.advice().cautions().stream(), sentences);
        if (!cautions.isEmpty()) {
            page.paragraph(INDENT, "Whoever works here takes care:");
            cautions.forEach(caution -> page.bullet(INDENT + 2, caution.advised(sentences)));
        }
    }

    private Stream<Ground> ground(Optional<Layer> layer) {
        return exercise.grounds().stream().filter(g -> g.layer().equals(layer));
    }

    /** The reasons of a ground that the apprentice could have named, as far as they are not told yet. */
    private void told(Ground ground) {
        offered(ground).filter(r -> !taught.contains(r.rule())).toList().forEach(reason -> {
            said(reason);
            teach(reason.rule());
        });
    }

    private Stream<Reason> offered(Ground ground) {
        List<RuleCard> rules = exercise.holding().toList();
        return ground.reasons().stream().filter(r -> rules.contains(r.rule()));
    }

    private void said(Reason reason) {
        page.bullet(INDENT + 2, English.sentence(sentences.because(reason)) + " [" + reason.rule().id() + "]");
    }

    private void teach(RuleCard rule) {
        if (taught.add(rule)) {
            page.paragraph(INDENT + 4, rule.teaches());
        }
    }
}
