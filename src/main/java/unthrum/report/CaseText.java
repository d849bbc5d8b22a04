package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Pairing;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.ThresholdEntry;
import unthrum.material.Layer;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.reasoning.Considered;
import unthrum.reasoning.Scored;
import unthrum.reasoning.Ladder;
import unthrum.effect.Layup;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.derive.Assumed;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/** The whole case of one panel as text: rule by rule what speaks for and against, and every material compared. */
public final class CaseText {

    private static final int INDENT = 2;
    /** The numbers by which materials are compared; no reason names them. */
    private static final List<String> COMPARING =
            List.of("tell/alike", "tell/alike-part", "worth/kilogram", "worth/money", "worth/panel");

    private final PlannedPanel planned;
    private final PanelAdvice advice;
    private final CaseScope scope;
    private final Knowledge knowledge;
    private final Page page;
    private final Sentences sentences;
    private final ReasonText reasons;
    private final LeftOutWords leftOut;
    private final LayupWords words;

    private CaseText(PlannedPanel planned, CaseScope scope, boolean teach, Knowledge knowledge, Page page) {
        this.planned = planned;
        this.advice = planned.advice();
        this.scope = scope;
        this.knowledge = knowledge;
        this.page = page;
        this.sentences = new Sentences(PlaceNames.on(advice.panel().facts()));
        this.reasons = new ReasonText(page, sentences, knowledge, teach);
        this.words = new LayupWords(advice.panel().facts());
        this.leftOut = new LeftOutWords(planned, sentences);
    }

    /** @param only show what concerns this layer; everything when absent */
    public static String of(PlannedPanel planned, Optional<Layer> only, boolean teach, Knowledge knowledge, int width,
                            Style style) {
        Page page = new Page(width, style);
        new CaseText(planned, new CaseScope(only), teach, knowledge, page).print(planned);
        return page.toString();
    }

    private void print(PlannedPanel planned) {
        page.title(planned.name() + ": " + Words.of(planned.verdict())
                + scope.only().map(l -> " (" + l.word() + " only)").orElse(""));
        if (planned.layup().isEmpty()) {
            page.paragraph(INDENT, "Nothing is laid.");
        }
        words.instructions(planned.layup()).forEach(line -> page.paragraph(INDENT, line));
        leftOut.lines().forEach(line -> page.paragraph(INDENT, "Left out, though chosen. " + line));
        wants();
        section("Against, though nothing asks for it", Veto.class, j -> !defeatsSomething(j));
        section("Limits on what may be laid", Limit.class, j -> true);
        section("What goes with what", Pairing.class, j -> true);
        section("Hold", Hold.class, j -> true);
        section("To be measured", Question.class, j -> true);
        overrules();
        candidates();
        advice.ladder().filter(l -> scope.admitsLadder()).ifPresent(this::ladder);
        List<Judgement> work = Stream.concat(PanelWork.of(planned).stream(), ofTheJob(Duty.class)).toList();
        List<Judgement> care = Stream.concat(advice.cautions().stream(), ofTheJob(Caution.class)).toList();
        section("Work", work.stream());
        section("Take care", care.stream());
        section("Would come with layers that are not laid", Stream.concat(without(Duty.class, work),
                without(Caution.class, care)));
        assumptions();
        numbers();
    }

    private boolean defeatsSomething(Judgement veto) {
        return advice.wants().stream().anyMatch(w -> w.vetoes().contains(veto));
    }

    private void wants() {
        List<WeighedWant> wants = advice.wants().stream().filter(w -> scope.admits(w.judgement())).toList();
        if (wants.isEmpty()) {
            heading("For and against");
            page.paragraph(INDENT, "No rule asks for a layer here.");
        }
        for (WeighedWant want : wants) {
            heading("For " + ConclusionWords.of(want.want(), sentences));
            reasons.print(want.judgement());
            want.vetoes().forEach(veto -> {
                page.paragraph(INDENT, "Against it:");
                reasons.print(veto);
            });
            page.paragraph(INDENT, outcome(want));
        }
    }

    private String outcome(WeighedWant want) {
        String weight = unthrum.reading.Dimension.NUMBER.show(want.weight());
        if (!want.stands()) {
            return "So it falls: each reason for it is outvoted by one of at least its standing.";
        }
        return "So it stands with a weight of " + weight + (want.vetoes().isEmpty() ? "." : ", after what is outvoted.");
    }

    private void section(String title, Class<? extends Conclusion> kind, Predicate<Judgement> which) {
        section(title, advice.panel().all(kind).stream().filter(which));
    }

    /** What the whole job asks for, as far as it concerns what this panel gets. */
    private Stream<Judgement> ofTheJob(Class<? extends Conclusion> kind) {
        Predicate<Layer> comes = l -> planned.verdict() == Verdict.HOLD || planned.layup().has(l)
                || l == Layer.SEAL && !planned.closings().isEmpty();
        return advice.panel().all(kind).stream().filter(j -> j.conclusion().place().isVehicle())
                .flatMap(j -> j.restingOn(r -> r.rule().serves(comes)).stream());
    }

    /** What the rules say beside what is told already. */
    private Stream<Judgement> without(Class<? extends Conclusion> kind, List<Judgement> told) {
        Set<Reason> reasons = told.stream().flatMap(j -> j.reasons().stream()).collect(Collectors.toSet());
        return advice.panel().all(kind).stream().flatMap(j -> j.restingOn(r -> !reasons.contains(r)).stream());
    }

    private void section(String title, Stream<Judgement> all) {
        List<Judgement> judgements = all.filter(scope::admits).toList();
        if (!judgements.isEmpty()) {
            heading(title);
        }
        for (Judgement judgement : judgements) {
            page.paragraph(INDENT, English.sentence(ConclusionWords.of(judgement.conclusion(), sentences)));
            reasons.print(judgement);
        }
    }

    private void overrules() {
        List<String> lines = new OverruleText(sentences).lines(advice.panel());
        if (!lines.isEmpty()) {
            heading("Set aside by the fitter");
            lines.forEach(line -> page.bullet(INDENT, line));
        }
    }

    private void candidates() {
        List<Considered> all = advice.considered().stream().filter(c -> scope.admits(c.material().layer())).toList();
        if (all.isEmpty()) {
            return;
        }
        heading("Materials compared");
        if (advice.isOfTheJob()) {
            page.paragraph(INDENT, GainWords.ofTheJob(advice));
        }
        Entries entries = new Entries();
        for (Considered candidate : all) {
            entries.add(candidate.material().material(), fate(candidate));
        }
        int longest = all.stream().mapToInt(c -> c.material().material().length()).max().orElse(0);
        entries.print(page, INDENT, longest + 2);
    }

    private String fate(Considered candidate) {
        if (candidate.chosen()) {
            return leftOut.why(candidate.material()).map(why -> "Chosen, and left out " + why + ".").orElse("Chosen.");
        }
        if (candidate.rejectedBy().isEmpty()) {
            return candidate.best().map(s -> "Inside the limits. " + GainWords.why(s, advice))
                    .orElse("Fits only with a companion that does not.");
        }
        List<String> limits = new ArrayList<>();
        for (Judgement limit : candidate.rejectedBy()) {
            limits.add(LimitWords.of((Limit) limit.conclusion()) + " [" + limit.reasons().get(0).rule().id() + "]");
        }
        return "Rejected: " + String.join("; ", limits) + ".";
    }

    private void ladder(Ladder ladder) {
        heading("The steps down against noise through the air");
        Entries entries = new Entries();
        ladder.room().ifPresent(r -> entries.add("room", "The limits leave a stack of " + Amounts.length(r) + "."));
        entries.add("on foam", step(ladder.decoupledBarrier()));
        entries.add("laid direct", step(ladder.barrierLaidDirect()));
        entries.add("no barrier", step(ladder.noBarrier()));
        entries.print(page, INDENT, 13);
    }

    private static String step(Optional<Scored> step) {
        return step.map(s -> s.layup().isEmpty() ? "Nothing." : English.capital(LayupWords.names(s.layup())) + ": takes "
                + GainWords.share(s.gain()) + " " + GainWords.ALL + ".").orElse("Nothing fits.");
    }

    private void assumptions() {
        if (advice.panel().facts().assumptions().isEmpty()) {
            return;
        }
        heading("Taken where the survey does not say");
        List<Assumed> decisive = advice.restsOn();
        Entries entries = new Entries();
        for (Assumed a : advice.panel().facts().assumptions().values()) {
            entries.add(a.fact(), LeverWords.written(a.value()) + ", because " + a.because() + " ("
                    + knowledge.sourceTitle(a.source()) + ")."
                    + (decisive.contains(a) ? " The verdict rests on it." : ""));
        }
        entries.print(page, INDENT, 16);
    }

    /** What was tried for each number that this case looked at and nobody published. */
    private void numbers() {
        Set<String> looked = new TreeSet<>(reasons.numbers());
        if (advice.considered().stream().anyMatch(c -> scope.admits(c.material().layer()))) {
            looked.addAll(COMPARING);
        }
        List<ThresholdEntry> unpublished = looked.stream().map(knowledge::threshold).filter(t -> t.tried().isPresent())
                .toList();
        if (!unpublished.isEmpty()) {
            heading("Numbers that nobody published");
            Entries entries = new Entries();
            unpublished.forEach(t -> entries.add(t.threshold(), NumberWords.of(t, knowledge) + "."));
            int longest = unpublished.stream().mapToInt(t -> t.threshold().length()).max().orElseThrow();
            entries.print(page, INDENT, longest + 2);
        }
    }

    private void heading(String title) {
        page.blank();
        page.heading(title);
    }
}
