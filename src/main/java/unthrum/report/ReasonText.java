package unthrum.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import unthrum.facts.AimedAt;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.facts.Threshold;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;
import unthrum.reasoning.engine.Reason.Compared;

/** The reasons of one conclusion in full: the sentence, what the rule looked at, and where it comes from. */
final class ReasonText {

    private static final int INDENT = 4;

    private final Page page;
    private final Sentences sentences;
    private final Knowledge knowledge;
    private final boolean teach;
    private final Set<RuleCard> taught = new LinkedHashSet<>();
    private final Set<String> numbers = new HashSet<>();

    ReasonText(Page page, Sentences sentences, Knowledge knowledge, boolean teach) {
        this.page = page;
        this.sentences = sentences;
        this.knowledge = knowledge;
        this.teach = teach;
    }

    void print(Judgement judgement) {
        judgement.reasons().forEach(this::print);
    }

    /** The ids of the numbers that the reasons printed so far looked at. */
    Set<String> numbers() {
        return Set.copyOf(numbers);
    }

    private void print(Reason reason) {
        RuleCard rule = reason.rule();
        String because = sentences.because(reason);
        String said = rule.advice().isPresent() ? Told.advised(sentences.advice(reason), because)
                : English.sentence(because);
        page.bullet(INDENT, said + " [" + rule.id() + "]");
        page.paragraph(INDENT + 2, "Rule: " + rule.name() + ". Standing: " + Words.of(rule.standing())
                + rule.weight().map(w -> ", a " + Words.of(w) + " reason").orElse("") + ". Source: "
                + knowledge.sourceTitle(rule.source()) + ".");
        String looked = lookedAt(reason);
        if (!looked.isEmpty()) {
            page.paragraph(INDENT + 2, "Looked at: " + looked + ".");
        }
        if (teach && taught.add(rule)) {
            page.paragraph(INDENT + 2, "Why it is so: " + rule.teaches());
        }
    }

    private String lookedAt(Reason reason) {
        List<String> looked = new ArrayList<>();
        for (Compared compared : reason.compared()) {
            looked.add(what(compared.fact(), compared.component()) + " = "
                    + Sentences.shown(compared.fact(), compared.component()) + (compared.assumed() ? " (assumed)" : ""));
        }
        reason.bindings().values().stream().filter(Threshold.class::isInstance).map(Threshold.class::cast)
                .forEach(t -> {
                    numbers.add(t.id());
                    looked.add("threshold " + t.id() + " " + t);
                });
        return String.join("; ", looked.stream().distinct().toList());
    }

    private String what(Fact fact, String component) {
        Place place = fact.place();
        String key = Words.key(component);
        if (fact instanceof AimedAt) {
            return "the client's " + key;
        }
        return place.isVehicle() ? "the vehicle's " + key
                : place.isWholePanel() ? key : key + " of " + sentences.place(place);
    }
}
