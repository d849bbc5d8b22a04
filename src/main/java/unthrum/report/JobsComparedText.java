package unthrum.report;

import java.util.List;
import unthrum.compare.Comparison;
import unthrum.compare.PanelChange;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** What other rules or numbers alter on many jobs: a line for each job, before the jobs themselves. */
public final class JobsComparedText {

    private static final List<Column> COLUMNS = List.of(new Column("job", Align.ELASTIC),
            new Column("panels treated otherwise", Align.RIGHT), new Column("mass", Align.RIGHT),
            new Column("money", Align.RIGHT));

    private JobsComparedText() {
    }

    public static String of(List<Comparison> jobs, int width, Style style) {
        Page page = new Page(width, style);
        List<Comparison> altered = jobs.stream().filter(j -> outcomes(j) > 0).toList();
        page.title(English.count(jobs.size(), "job") + ", " + (altered.isEmpty() ? "none" : altered.size())
                + " treated otherwise");
        page.table(0, COLUMNS, jobs.stream().map(j -> new Row(List.of(j.before().title(),
                String.valueOf(outcomes(j)), ComparisonText.mass(j.mass()), ComparisonText.money(j.price()))))
                .toList());
        return page.toString();
    }

    private static long outcomes(Comparison job) {
        return job.changed().stream().filter(PanelChange::isOutcome).count();
    }
}
