package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import unthrum.compare.Comparison;
import unthrum.compare.FactChange;
import unthrum.compare.PanelChange;
import unthrum.compare.Side.PanelSide;
import unthrum.reading.Words;
import unthrum.effect.Layup;

/** A comparison as text: the sums, then each panel that gets something else with the facts and rules behind it. */
public final class ComparisonText {
    private static final int LABELS = 12;
    private static final int AIM_LABELS = 15;

    private final Comparison comparison;
    private final Page page;
    private final Sentences sentences = new Sentences(PlaceNames.anywhere());

    private ComparisonText(Comparison comparison, Page page) {
        this.comparison = comparison;
        this.page = page;
    }

    public static String of(Comparison comparison, int width, Style style) {
        Page page = new Page(width, style);
        new ComparisonText(comparison, page).print();
        return page.toString();
    }

    private void print() {
        page.title(comparison.before().title() + " against " + comparison.after().title());
        if (comparison.isNothing()) {
            page.paragraph(0, "Nothing differs.");
            return;
        }
        List<PanelChange> outcomes = comparison.changed().stream().filter(PanelChange::isOutcome).toList();
        page.paragraph(0, English.sentence(English.count(outcomes.size(), "panel") + " treated otherwise, "
                + comparison.added().size() + " added, " + comparison.gone().size() + " gone")
                + " Mass " + mass(comparison.mass()) + ", price of the material " + money(comparison.price()) + ".");
        page.blank();
        sides();
        aims();
        outcomes.forEach(this::changed);
        List<PanelChange> quiet = comparison.changed().stream().filter(c -> !c.isOutcome())
                .filter(ComparisonText::isShown).toList();
        if (!quiet.isEmpty()) {
            page.heading("Said otherwise, treated alike");
            quiet.forEach(c -> page.paragraph(0, English.sentence(c.name() + ": " + cause(c))));
        }
    }

    private void sides() {
        Entries entries = new Entries();
        comparison.vehicle().forEach(f -> entries.add("vehicle", fact(f)));
        comparison.added().forEach(p -> entries.add("added", panel(p)));
        comparison.gone().forEach(p -> entries.add("gone", panel(p)));
        entries.print(page, 0, LABELS);
    }

    private void aims() {
        Entries entries = new Entries();
        comparison.aims().forEach(aim -> new EffectChangeText(aim.effects()).lines()
                .forEach(line -> entries.add(Words.of(aim.aim()), line)));
        if (!entries.isEmpty()) {
            page.heading("What the aims gain otherwise");
            entries.print(page, 0, AIM_LABELS);
            page.blank();
        }
    }

    private String panel(PanelSide panel) {
        return panel.name() + ": " + panel.verdict().map(v -> Words.of(v) + ", ").orElse("") + brief(panel.layup())
                + ".";
    }

    private void changed(PanelChange change) {
        page.heading(change.name());
        Entries entries = new Entries();
        entries.add("before", outcome(change.before()));
        entries.add("after", outcome(change.after()) + (change.mass() == 0 ? ""
                : " (" + mass(change.mass()) + ", price of the material " + money(change.price()) + ")"));
        change.facts().forEach(f -> entries.add("fact", fact(f)));
        Told.of(change.nowSaid().stream(), sentences).forEach(t -> entries.add("now", English.sentence(t.clause())
                + " [" + t.rule().id() + "]"));
        Told.of(change.nowQuiet().stream(), sentences).forEach(t -> entries.add("no longer",
                English.sentence(t.clause()) + " [" + t.rule().id() + "]"));
        effects(change).forEach(line -> entries.add("effect", line));
        if (!change.before().leftOut().equals(change.after().leftOut())) {
            entries.add("shared", "Mass, money and stock are shared out otherwise: left out before "
                    + leftOut(change.before()) + ", after " + leftOut(change.after()) + ".");
        }
        entries.print(page, 0, LABELS);
        page.blank();
    }

    private static List<String> effects(PanelChange change) {
        List<String> lines = new ArrayList<>(new EffectChangeText(change.effects()).lines());
        if (!lines.isEmpty() && !change.wallsMeasured()) {
            lines.add(PanelEffectText.COMPUTED);
        }
        return lines;
    }

    private static String leftOut(PanelSide side) {
        List<String> names = side.leftOut().stream().map(l -> l.material().material() + " on "
                + new Sentences(PlaceNames.anywhere()).place(l.patch().place())).toList();
        return names.isEmpty() ? "nothing" : English.and(names);
    }

    private String outcome(PanelSide side) {
        return English.capital(side.verdict().map(v -> Words.of(v) + ": ").orElse("") + brief(side.layup())) + ".";
    }

    private String brief(Layup layup) {
        return layup.isEmpty() ? "nothing" : new LayupWords(sentences).brief(layup);
    }

    private static String cause(PanelChange change) {
        List<String> facts = change.facts().stream().map(ComparisonText::inShort).toList();
        int rules = change.nowSaid().size() + change.nowQuiet().size();
        if (!facts.isEmpty()) {
            return English.and(facts);
        }
        return rules > 0 ? English.count(rules, "conclusion") + " otherwise"
                : "the same layers, other effects. " + String.join(" ", effects(change));
    }

    /** Effects that differ by less than is shown are no difference to read of. */
    private static boolean isShown(PanelChange change) {
        return !change.facts().isEmpty() || !change.nowSaid().isEmpty() || !change.nowQuiet().isEmpty()
                || !new EffectChangeText(change.effects()).lines().isEmpty();
    }

    private static String inShort(FactChange f) {
        return f.key() + " " + f.before() + " to " + f.after();
    }

    private static String fact(FactChange f) {
        return f.key() + ": " + f.before() + ", now " + f.after() + ".";
    }

    static String mass(double kg) {
        return signed(kg, Amounts.mass(Math.abs(kg)));
    }

    static String money(double amount) {
        return signed(amount, String.format(java.util.Locale.ROOT, "%.0f", Math.abs(amount)));
    }

    private static String signed(double value, String amount) {
        return Math.abs(value) < 1e-9 ? "unchanged" : (value > 0 ? "+" : "-") + amount;
    }
}
