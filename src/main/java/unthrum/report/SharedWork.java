package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.knowledge.RuleCard;
import unthrum.plan.Plan;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * Work, dangers and measurements that several panels have in common: told once, with the panels named.
 *
 * @param treated the panels that get a layer, or wait for one
 */
record SharedWork(List<Shared> duties, List<Shared> cautions, List<Shared> questions, List<String> treated) {

    /** From so many panels on a thing is told once. */
    private static final int SEVERAL = 3;
    private static final int LABELS = 12;

    /** @param first the reason on the first of the panels, told as an example */
    record Shared(RuleCard rule, Judgement judgement, Reason first, String firstPanel, List<String> panels) {
    }

    static SharedWork of(Plan plan) {
        Map<RuleCard, List<Shared>> duties = new LinkedHashMap<>();
        Map<RuleCard, List<Shared>> cautions = new LinkedHashMap<>();
        Map<RuleCard, List<Shared>> questions = new LinkedHashMap<>();
        for (PlannedPanel panel : plan.panels()) {
            PanelWork.of(panel).forEach(d -> note(duties, d, panel));
            panel.advice().cautions().forEach(c -> note(cautions, c, panel));
            panel.advice().questions().forEach(q -> note(questions, q, panel));
        }
        List<Shared> work = new ArrayList<>(several(duties));
        work.sort(java.util.Comparator.comparing(s -> PanelWork.work(s.judgement())));
        List<String> treated = plan.panels().stream().filter(p -> !p.layup().isEmpty() || p.verdict() == Verdict.HOLD)
                .map(PlannedPanel::name).toList();
        return new SharedWork(work, several(cautions), several(questions), treated);
    }

    private static void note(Map<RuleCard, List<Shared>> byRule, Judgement judgement, PlannedPanel panel) {
        judgement.reasons().forEach(r -> byRule.computeIfAbsent(r.rule(), k -> new ArrayList<>())
                .add(new Shared(r.rule(), judgement, r, panel.name(), List.of(panel.name()))));
    }

    private static List<Shared> several(Map<RuleCard, List<Shared>> byRule) {
        List<Shared> shared = new ArrayList<>();
        for (List<Shared> each : byRule.values()) {
            List<String> panels = each.stream().map(Shared::firstPanel).distinct().toList();
            if (panels.size() >= SEVERAL) {
                Shared first = each.get(0);
                shared.add(new Shared(first.rule(), first.judgement(), first.first(), first.firstPanel(), panels));
            }
        }
        return shared;
    }

    /** The ids of the rules told here. */
    Set<String> rules() {
        return Stream.of(duties, cautions, questions).flatMap(List::stream).map(s -> s.rule().id())
                .collect(Collectors.toSet());
    }

    void print(Page page) {
        if (rules().isEmpty()) {
            return;
        }
        page.heading("The same on several panels");
        Entries entries = new Entries();
        cautions.forEach(s -> add(entries, "take care", s));
        questions.forEach(s -> add(entries, "measure", s));
        duties.forEach(s -> add(entries, "work", s));
        entries.print(page, 0, LABELS);
        page.blank();
    }

    /** The panels by name, or those that are left out where they are all but a few. */
    private String where(List<String> panels) {
        List<String> others = treated.stream().filter(p -> !panels.contains(p)).toList();
        boolean more = !treated.containsAll(panels);
        if (more || others.size() > SEVERAL || panels.size() <= SEVERAL * others.size()) {
            return English.and(panels);
        }
        return "every panel that is or will be treated" + (others.isEmpty() ? "" : " but " + English.and(others));
    }

    private void add(Entries entries, String label, Shared shared) {
        Sentences sentences = new Sentences(PlaceNames.anywhere());
        entries.add(label, English.sentence(sentences.advice(shared.first())) + " On "
                + where(shared.panels()) + ". For one, " + sentences.because(shared.first()) + ". ["
                + shared.rule().id() + "]");
    }
}
