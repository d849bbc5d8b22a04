package unthrum.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import unthrum.plan.Plan;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** A plan as text: what becomes of every panel, each panel's reasons, the work that many share, shopping and totals. */
public final class PlanText {

    private static final int LABELS = 12;

    private final Plan plan;
    private final Collection<String> panels;
    private final Page page;
    private final Sentences anywhere = new Sentences(PlaceNames.anywhere());

    private PlanText(Plan plan, Collection<String> panels, Page page) {
        this.plan = plan;
        this.panels = panels;
        this.page = page;
    }

    /** @param panels those to show in full; all when empty */
    public static String of(Plan plan, Collection<String> panels, int width, Style style) {
        Page page = new Page(width, style);
        new PlanText(plan, panels, page).print();
        return page.toString();
    }

    private void print() {
        head();
        overview();
        SharedWork shared = SharedWork.of(plan);
        page.blank();
        page.heading("Panel by panel");
        shown().forEach(p -> {
            new PanelText(p, plan.effects().panel(p.name()).orElseThrow(),
                    panels.isEmpty() ? shared.rules() : Set.of()).print(page);
            page.blank();
        });
        if (panels.isEmpty()) {
            shared.print(page);
            wholeJob();
            new EffectText(plan.effects()).print(page);
            new SharingText(plan).print(page);
            new ShoppingText(plan).print(page);
        }
    }

    private List<PlannedPanel> shown() {
        return plan.panels().stream().filter(p -> panels.isEmpty() || panels.contains(p.name())).toList();
    }

    private void head() {
        var vehicle = plan.survey().vehicle();
        page.title(plan.survey().survey());
        List<String> words = new ArrayList<>(List.of(Words.of(vehicle.body()), Words.of(vehicle.drive()),
                English.and(vehicle.use().stream().map(Words::of).toList())));
        vehicle.year().ifPresent(y -> words.add("built " + y));
        page.paragraph(0, English.sentence(String.join(", ", words)) + " Wanted, the weightiest first: "
                + String.join(", ", plan.survey().aims().stream().map(Words::of).toList()) + ".");
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        plan.panels().forEach(p -> counts.merge(p.verdict(), 1, Integer::sum));
        page.paragraph(0, English.count(plan.panels().size(), "panel") + ": " + String.join(", ",
                counts.entrySet().stream().map(e -> Words.of(e.getKey()) + " " + e.getValue()).toList()) + ".");
        page.blank();
    }

    private void overview() {
        List<Row> rows = new ArrayList<>();
        for (PlannedPanel p : plan.panels()) {
            LayupWords words = new LayupWords(p.advice().panel().facts());
            String layup = p.layup().isEmpty() ? "–" : words.brief(p.layup());
            rows.add(new Row(List.of(p.name(), Words.of(p.verdict()), layup,
                    Amounts.kilograms(p.layup().mass())), text -> page.style().verdict(p.verdict(), text)));
        }
        page.table(0, List.of(new Column("panel", Align.LEFT), new Column("verdict", Align.LEFT),
                new Column("layup, from the metal inward", Align.ELASTIC), new Column("kg", Align.RIGHT)), rows);
    }

    private void wholeJob() {
        page.heading("The whole job");
        Entries entries = new Entries();
        Told.of(plan.questions().stream(), anywhere).forEach(t -> entries.add("measure", t.advised(anywhere)));
        Told.of(plan.cautions().stream(), anywhere).forEach(t -> entries.add("take care", t.advised(anywhere)));
        Told.of(PanelWork.inOrder(plan.duties().stream()).stream(), anywhere)
                .forEach(t -> entries.add("work", t.advised(anywhere)));
        entries.print(page, 0, LABELS);
        page.blank();
    }
}
