package unthrum.report;

import java.util.List;
import unthrum.reading.Words;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.change.WhatIf;
import unthrum.reasoning.engine.Judgement;

/** A panel as it might be beside the panel as it is: only what differs. */
public final class WhatIfText {

    private static final int INDENT = 2;

    private final WhatIf whatIf;
    private final Page page;
    private final Sentences today;
    private final Sentences changed;

    private WhatIfText(WhatIf whatIf, Page page) {
        this.whatIf = whatIf;
        this.page = page;
        this.today = new Sentences(PlaceNames.on(whatIf.today().panel().facts()));
        this.changed = new Sentences(PlaceNames.on(whatIf.changed().panel().facts()));
    }

    public static String of(WhatIf whatIf, int width, Style style) {
        Page page = new Page(width, style);
        page.paragraph(0, ChangesText.BY_ITSELF);
        page.blank();
        new WhatIfText(whatIf, page).print();
        return page.toString();
    }

    private void print() {
        page.title(whatIf.today().name() + ", what if");
        whatIf.turns().forEach(t -> page.bullet(INDENT, English.sentence(LeverWords.turns(List.of(t)))));
        page.blank();
        page.entry(INDENT, "Today", 8, said(whatIf.today()));
        page.entry(INDENT, "Then", 8, said(whatIf.changed()));
        if (!whatIf.effects().isEmpty()) {
            page.paragraph(INDENT, English.sentence("so "
                    + new EffectWords(changed).of(whatIf.effects(), whatIf.changed().layup())));
        } else if (!whatIf.isOtherLayup()) {
            page.paragraph(INDENT, "So the panel gets the same.");
        }
        list("No longer holds", whatIf.gone(), today);
        list("Holds then", whatIf.come(), changed);
    }

    private static String said(PanelAdvice advice) {
        String laid = advice.layup().isEmpty() ? "nothing is laid"
                : new LayupWords(advice.panel().facts()).brief(advice.layup());
        return Words.of(advice.verdict()) + "; " + laid
                + (advice.layup().isEmpty() ? "" : "; " + Amounts.mass(advice.layup().mass()));
    }

    private void list(String title, List<Judgement> judgements, Sentences sentences) {
        if (!judgements.isEmpty()) {
            page.blank();
            page.title("  " + title);
        }
        for (Judgement judgement : judgements) {
            judgement.reasons().stream().limit(1).forEach(r -> page.bullet(INDENT,
                    English.capital(ConclusionWords.of(judgement.conclusion(), sentences)) + ", because "
                            + sentences.because(r) + ". [" + r.rule().id() + "]"));
        }
    }
}
