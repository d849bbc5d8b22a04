package unthrum.report;

import java.util.List;
import unthrum.reading.Words;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.change.Change;
import unthrum.reasoning.change.Doubt;
import unthrum.reasoning.engine.Judgement;

/** The panels worth an older hand's look, with what makes them so. */
public final class DoubtText {

    private static final int INDENT = 2;

    private DoubtText() {
    }

    public static String of(String survey, List<Doubt> doubts, int width, Style style) {
        Page page = new Page(width, style);
        page.title(survey + ": " + (doubts.isEmpty() ? "no panel is doubtful"
                : English.count(doubts.size(), "panel") + " worth a second look"));
        if (!doubts.isEmpty()) {
            page.paragraph(0, ChangesText.BY_ITSELF.replace("the panel", "each panel"));
        }
        for (Doubt doubt : doubts) {
            page.blank();
            page.title(doubt.advice().name() + ": " + Words.of(doubt.advice().verdict()));
            print(page, doubt, new Sentences(PlaceNames.on(doubt.advice().panel().facts())));
        }
        return page.toString();
    }

    private static void print(Page page, Doubt doubt, Sentences sentences) {
        for (Judgement tap : doubt.taps()) {
            tap.reasons().forEach(r -> page.bullet(INDENT, "Tap against formula: " + sentences.because(r) + ". ["
                    + r.rule().id() + "]"));
        }
        EffectWords effects = new EffectWords(sentences);
        for (Change flip : doubt.flips()) {
            page.bullet(INDENT, "Close call: " + LeverWords.turns(flip.turns()) + ", "
                    + effects.of(flip.effects(), flip.layup()) + ".");
        }
        for (WeighedWant want : doubt.contests()) {
            page.bullet(INDENT, "Outvoted by its equal: " + ConclusionWords.of(want.want(), sentences) + ", because "
                    + sentences.because(want.vetoes().get(0).reasons().get(0)) + ".");
        }
        if (doubt.slight()) {
            page.bullet(INDENT, GainWords.slight(doubt.advice()));
        }
        if (!doubt.assumptions().isEmpty()) {
            page.bullet(INDENT, "Assumed: " + English.and(doubt.assumptions().stream()
                    .map(a -> a.fact() + " (" + LeverWords.written(a.value()) + ")").toList()) + ".");
        }
    }
}
