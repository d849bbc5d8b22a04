package unthrum.report;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import unthrum.drill.Answer;
import unthrum.drill.Boxes;
import unthrum.drill.Exercise;
import unthrum.drill.Mark;
import unthrum.drill.Practised;
import unthrum.drill.Progress;
import unthrum.drill.Result;
import unthrum.drill.Spoken;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.reading.Problem;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** Practice as text: the panels to judge, the marks with what is to be learned from them, and the master's report. */
public final class DrillText {

    private static final int INDENT = 2;
    private static final int NUMBERS = 4;

    private static final List<Column> COLUMNS = List.of(new Column("subject", Align.LEFT),
            new Column("asked", Align.RIGHT), new Column("right", Align.RIGHT), new Column("wrong reason", Align.RIGHT),
            new Column("wrong", Align.RIGHT), new Column("box", Align.RIGHT), new Column("due next", Align.LEFT));

    private final Knowledge knowledge;
    private final int width;
    private final Style style;

    public DrillText(Knowledge knowledge, int width, Style style) {
        this.knowledge = knowledge;
        this.width = width;
        this.style = style;
    }

    /** How to answer. */
    public String howTo() {
        Page page = new Page(width, style);
        page.paragraph(0, "Say of each panel what goes where, then why. Layers: " + Spoken.words() + ".");
        page.paragraph(0, "Damping takes the numbers of its bays, seal the letters of its holes, other layers cover the "
                + "panel: 'damping 1 2; insulation; seal a'. 'damping' alone means every bay. "
                + "'wait': it cannot be reached or prepared yet. 'measure': a measurement decides first; holes may be "
                + "sealed meanwhile. Name at least one reason for each layer, or for the panel's staying bare, and none "
                + "that does not hold here; 'none' names no reason.");
        page.blank();
        return page.toString();
    }

    /** A panel with the reasons to choose from. */
    public String question(Exercise exercise, int number, int of) {
        Page page = new Page(width, style);
        page.heading("Panel " + number + " of " + of + ": " + exercise.panel().panel() + " ("
                + exercise.survey().survey() + ")");
        page.paragraph(0, SurveyedPanel.vehicle(exercise.survey()));
        page.blank();
        PanelSketch.of(exercise.panel(), exercise.advice().panel().facts(), width - 2 * INDENT - 2)
                .forEach(line -> page.verbatim(" ".repeat(INDENT) + line));
        page.blank();
        SurveyedPanel.print(page, exercise.panel(), exercise.advice().panel().facts().assumptions().values());
        page.blank();
        page.paragraph(0, "Reasons to choose from:");
        exercise.choices().forEach(c ->
                page.entry(INDENT, String.valueOf(exercise.number(c)), NUMBERS, c.rule().name()));
        page.blank();
        return page.toString();
    }

    /** An answer that was given beforehand. */
    public String said(Answer answer, Exercise exercise) {
        Page page = new Page(width, style);
        String why = English.and(answer.why().stream().map(String::valueOf).toList());
        page.paragraph(0, "Answered: " + Spoken.of(answer.outcome(), exercise) + ". Why: "
                + (why.isEmpty() ? "none" : why) + ".");
        return page.toString();
    }

    /** What is wrong with what was typed. */
    public String again(Problem problem) {
        Page page = new Page(width, style);
        page.paragraph(INDENT, problem.toString());
        return page.toString();
    }

    /** An answer marked. */
    public String mark(Mark mark) {
        Page page = new Page(width, style);
        new MarkText(mark, knowledge, page).print();
        page.blank();
        return page.toString();
    }

    /** What came of all answers. */
    public String summary(Collection<Mark> marks, String where) {
        Page page = new Page(width, style);
        Map<Result, Long> counts = marks.stream().collect(Collectors.groupingBy(Mark::result, Collectors.counting()));
        page.paragraph(0, marks.isEmpty() ? "Nothing answered." : English.count(marks.size(), "panel") + " answered: "
                + counts.getOrDefault(Result.RIGHT, 0L) + " right, " + counts.getOrDefault(Result.WRONG_REASON, 0L)
                + " right for the wrong reason, " + counts.getOrDefault(Result.WRONG, 0L) + " wrong. Kept in " + where
                + ".");
        return page.toString();
    }

    /** How an apprentice stands, subject by subject, the soonest due first. */
    public String report(Progress progress, LocalDate today, String where) {
        Page page = new Page(width, style);
        page.title("Practice kept in " + where);
        if (progress.practised().isEmpty()) {
            page.paragraph(0, "Nothing was practised yet.");
            return page.toString();
        }
        page.blank();
        List<Row> rows = progress.practised().stream().sorted(Comparator.comparing(Practised::due)
                .thenComparing(Practised::subject)).map(p -> row(p, today)).toList();
        page.table(0, COLUMNS, rows);
        Set<String> never = new TreeSet<>(knowledge.cards().stream().filter(c -> c.weight().isPresent())
                .map(RuleCard::subject).toList());
        progress.practised().forEach(p -> never.remove(p.subject()));
        page.blank();
        page.paragraph(0, "A right answer on a day when it is due moves a subject one box on, any other back to box 1; "
                + "each box waits longer than the one before: "
                + English.and(Boxes.DAYS.stream().map(String::valueOf).toList()) + " days.");
        if (!never.isEmpty()) {
            page.paragraph(0, "Never practised yet: " + English.and(List.copyOf(never)) + ".");
        }
        return page.toString();
    }

    private static Row row(Practised p, LocalDate today) {
        return new Row(List.of(p.subject(), String.valueOf(p.asked()), String.valueOf(p.right()),
                String.valueOf(p.wrongReason()), String.valueOf(p.wrong()), String.valueOf(p.box()),
                p.due().isAfter(today) ? p.due().toString() : "now"));
    }
}
