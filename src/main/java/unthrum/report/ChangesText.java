package unthrum.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.effect.Layup;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.reading.Words;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.Change;
import unthrum.reasoning.change.Change.Turn;
import unthrum.reasoning.change.Change.Use;
import unthrum.reasoning.change.Confidence;
import unthrum.reasoning.change.Effect;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.WhyNot;

/** What a panel does not get and why, what would change it, and how sure its verdict is. */
public final class ChangesText {

    static final String BY_ITSELF = "Below, the panel is judged by itself, as if packs, money and mass were plenty.";

    private static final int INDENT = 2;
    private static final Map<Use, String> TITLES = Map.of(
            Use.ADVICE, "Something to do",
            Use.MEASURE, "Worth measuring once more",
            Use.UNDERSTANDING, "To understand it");

    private final PanelAdvice advice;
    private final Optional<Layer> only;
    private final Page page;
    private final Sentences sentences;
    private final EffectWords effects;
    private final Set<String> said = new HashSet<>();

    private ChangesText(PanelAdvice advice, Optional<Layer> only, Page page) {
        this.advice = advice;
        this.only = only;
        this.page = page;
        this.sentences = new Sentences(PlaceNames.on(advice.panel().facts()));
        this.effects = new EffectWords(sentences);
    }

    /**
     * @param only   show what concerns this layer; everything when absent
     * @param planned what the plan for the whole vehicle lays on the panel, if it was made
     */
    public static String of(Turned turned, Optional<Layer> only, boolean full, Optional<Layup> planned,
                            Knowledge knowledge, int width, Style style) {
        Page page = new Page(width, style);
        Layup own = turned.advice().layup();
        if (!planned.equals(Optional.of(own))) {
            page.blank();
            page.paragraph(0, BY_ITSELF + (planned.isEmpty() ? "" : " Then it gets "
                    + (own.isEmpty() ? "nothing" : LayupWords.names(own)) + "."));
        }
        ChangesText text = new ChangesText(turned.advice(), only, page);
        text.whyNot(turned.whyNots().stream().filter(a -> planned.isEmpty() || !lies(planned.get(), a)).toList(), full,
                knowledge);
        text.changes(turned.changes());
        text.confidence(turned.confidence());
        return page.toString();
    }

    private static boolean lies(Layup planned, WhyNot answer) {
        return planned.of(answer.layer()).stream().flatMap(laid -> laid.patches().stream())
                .anyMatch(patch -> patch.place().equals(answer.place()));
    }

    private void whyNot(List<WhyNot> answers, boolean full, Knowledge knowledge) {
        List<WhyNot> shown = answers.stream().filter(a -> only.isEmpty() || only.get() == a.layer()).toList();
        if (shown.isEmpty()) {
            return;
        }
        page.blank();
        page.heading("Why not");
        WhyNotWords words = new WhyNotWords(sentences, knowledge);
        for (WhyNot answer : shown) {
            page.paragraph(INDENT, words.of(answer));
            if (full) {
                words.tree(answer).forEach(line -> page.bullet(INDENT + 2, line));
            }
        }
    }

    private void changes(List<Change> changes) {
        List<Change> shown = changes.stream().filter(this::concerns).toList();
        page.blank();
        page.heading("What would change it");
        if (shown.isEmpty()) {
            page.paragraph(INDENT, "No fact by itself, within what is plausible, changes what this panel gets.");
        }
        for (Use use : Use.values()) {
            Map<List<Object>, List<Change>> alike = alike(shown, use);
            if (!alike.isEmpty()) {
                page.title("  " + TITLES.get(use));
                alike.values().forEach(this::change);
            }
        }
    }

    private boolean concerns(Change change) {
        return only.isEmpty() || change.effects().stream().anyMatch(e -> e instanceof Effect.Gains gains
                && gains.spot().layer() == only.get() || e instanceof Effect.Loses loses
                && loses.spot().layer() == only.get());
    }

    /** The changes of a use; several words of one fact that do the same stand together. */
    private static Map<List<Object>, List<Change>> alike(List<Change> changes, Use use) {
        Map<List<Object>, List<Change>> alike = new LinkedHashMap<>();
        for (Change change : changes) {
            if (change.use() == use) {
                List<Object> key = new ArrayList<>(List.of(change.effects(), change.layup()));
                change.turns().forEach(t -> key.add(List.of(t.lever().name(), t.lever().isScale() ? t.to() : "")));
                alike.computeIfAbsent(key, k -> new ArrayList<>()).add(change);
            }
        }
        return alike;
    }

    private void change(List<Change> alike) {
        Change first = alike.get(0);
        String turn = first.turns().size() > 1 ? LeverWords.turns(first.turns())
                : LeverWords.turn(first.turns().get(0).lever(), alike.stream().map(c -> c.turns().get(0).to()).toList());
        page.bullet(INDENT, English.capital(turn) + ", " + effects.of(first.effects(), first.layup()) + "."
                + how(first));
    }

    /** How to go about it, said once for each fact. */
    private String how(Change change) {
        List<String> ways = change.use() == Use.UNDERSTANDING ? List.of() : change.turns().stream().map(Turn::lever)
                .map(lever -> change.use() == Use.ADVICE ? lever.how().change().orElseThrow() : lever.how().measure())
                .filter(said::add).toList();
        return ways.isEmpty() ? "" : " " + English.sentence((change.use() == Use.ADVICE ? "to do so, " : "to be sure, ")
                + String.join("; and ", ways));
    }

    private void confidence(Confidence confidence) {
        page.blank();
        page.heading("How sure it is");
        String verdict = "The verdict, " + Words.of(advice.verdict()) + ",";
        page.paragraph(INDENT, confidence.isMeasured() ? verdict + " rests on what was measured."
                : verdict + " rests on " + English.count(confidence.assumptions().size(), "assumption") + ": "
                        + English.and(confidence.assumptions().stream()
                                .map(a -> a.fact() + " taken as " + LeverWords.written(a.value())).toList()) + ".");
        if (!confidence.typical().isEmpty()) {
            page.paragraph(INDENT, "The data of "
                    + English.and(confidence.typical().stream().map(m -> m.material()).distinct().toList())
                    + " are typical ones; the product's own data sheet overrides them.");
        }
        page.paragraph(INDENT, confidence.nearest().map(this::nearest)
                .orElse("No measured number, within what is plausible, turns it."));
    }

    private String nearest(Change change) {
        return "The nearest number that turns it: " + LeverWords.turns(change.turns()) + ", "
                + effects.of(change.effects(), change.layup()) + ".";
    }
}
