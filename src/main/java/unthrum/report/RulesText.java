package unthrum.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.ThresholdEntry;
import unthrum.reading.Words;
import unthrum.report.Page.Align;
import unthrum.report.Page.Column;
import unthrum.report.Page.Row;

/** The rules of the trade for browsing: by subject, and each with its card, its numbers and its very text. */
public final class RulesText {

    private static final Pattern THRESHOLD = Pattern.compile("Threshold\\(id == \"([^\"]+)\"\\)");
    private static final int LABELS = 12;

    private final Knowledge knowledge;
    private final int width;
    private final Style style;
    private final Map<String, List<RuleCard>> bySubject;

    public RulesText(Knowledge knowledge, int width, Style style) {
        this.knowledge = knowledge;
        this.width = width;
        this.style = style;
        this.bySubject = knowledge.cards().stream().sorted(Comparator.comparing(RuleCard::id))
                .collect(Collectors.groupingBy(RuleCard::subject, TreeMap::new, Collectors.toList()));
    }

    public List<String> subjectNames() {
        return List.copyOf(bySubject.keySet());
    }

    public List<String> ruleIds() {
        return knowledge.cards().stream().map(RuleCard::id).toList();
    }

    public List<String> numberIds() {
        return knowledge.thresholds().stream().map(ThresholdEntry::threshold).toList();
    }

    public Optional<RuleCard> find(String id) {
        return knowledge.cards().stream().filter(c -> c.id().equals(id)).findFirst();
    }

    /** Every rule by subject. */
    public String subjects() {
        Page page = new Page(width, style);
        page.paragraph(0, English.count(knowledge.cards().size(), "rule") + " on " + bySubject.size()
                + " subjects. One subject: unthrum rules SUBJECT. One rule: unthrum rules ID.");
        bySubject.forEach((subject, cards) -> {
            page.blank();
            list(page, subject, cards);
        });
        return page.toString();
    }

    /** The rules of one subject. */
    public Optional<String> subject(String subject) {
        return Optional.ofNullable(bySubject.get(subject)).map(cards -> {
            Page page = new Page(width, style);
            list(page, subject, cards);
            return page.toString();
        });
    }

    private static void list(Page page, String subject, List<RuleCard> cards) {
        page.title(subject + " (" + English.count(cards.size(), "rule") + ")");
        page.table(2, List.of(new Column("id", Align.LEFT), new Column("standing", Align.LEFT),
                        new Column("what it says", Align.ELASTIC)),
                cards.stream().map(c -> new Row(List.of(c.id(), Words.of(c.standing()), c.name()))).toList());
    }

    /**
     * One rule in full.
     *
     * @param source the lines of the file that holds it
     */
    public String card(RuleCard card, List<String> source) {
        Page page = new Page(width, style);
        page.title(card.name());
        Entries entries = new Entries();
        entries.add("id", card.id());
        entries.add("pattern", card.pattern().toString());
        entries.add("standing", Words.of(card.standing())
                + card.weight().map(w -> ", and a " + Words.of(w) + " reason for a layer").orElse(""));
        card.advice().ifPresent(a -> entries.add("advice", English.capital(a) + "."));
        entries.add("because", card.because());
        entries.add("teaches", card.teaches());
        entries.add("source", knowledge.sourceTitle(card.source()));
        List<String> text = text(card, source);
        thresholds(text).forEach(t -> entries.add("numbers", numberLine(t)));
        entries.print(page, 0, LABELS);
        page.blank();
        text.forEach(page::verbatim);
        return page.toString();
    }

    /** One number with its meaning and source, whether a rule holds it or a sum. */
    public Optional<String> number(String id) {
        return knowledge.thresholds().stream().filter(t -> t.threshold().equals(id)).findFirst().map(t -> {
            Page page = new Page(width, style);
            page.paragraph(0, numberLine(t) + ".");
            return page.toString();
        });
    }

    private String numberLine(ThresholdEntry number) {
        return number.threshold() + " = " + NumberWords.of(number, knowledge) + "; checked " + number.checked();
    }

    private List<ThresholdEntry> thresholds(List<String> text) {
        List<String> ids = new ArrayList<>();
        for (Matcher m = THRESHOLD.matcher(String.join("\n", text)); m.find();) {
            ids.add(m.group(1));
        }
        return knowledge.thresholds().stream().filter(t -> ids.contains(t.threshold())).toList();
    }

    /** The rule's conditions and consequence as they stand in its file; what its marks say is told above them. */
    private static List<String> text(RuleCard card, List<String> source) {
        int head = source.indexOf("rule \"" + card.name() + "\"");
        if (head < 0) {
            throw new IllegalStateException("no file of rules holds '" + card.id() + "'");
        }
        List<String> rest = source.subList(head, source.size());
        List<String> whole = rest.subList(0, rest.indexOf("end") + 1);
        return whole.stream().filter(line -> !line.startsWith("@")).toList();
    }
}
