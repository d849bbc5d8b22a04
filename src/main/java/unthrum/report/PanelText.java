package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.effect.PanelEffect;
import unthrum.facts.Question;
import unthrum.facts.Veto;
import unthrum.material.Layer;
import unthrum.plan.LeftOut;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Words;
import unthrum.reasoning.Closing;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.derive.Assumed;
import unthrum.reasoning.engine.Judgement;

/** One panel of a plan: the advice first, then its reasons with the panel's own numbers. */
final class PanelText {

    private static final int INDENT = 2;
    private static final int LABELS = 16;

    private final PlannedPanel planned;
    private final PanelAdvice advice;
    private final PanelEffect effect;
    private final Set<String> toldElsewhere;
    private final Sentences sentences;
    private final LayupWords words;
    private final Unserved unserved;
    private final Entries entries = new Entries();

    /** @param toldElsewhere ids of the rules whose work and dangers the plan tells once for many panels */
    PanelText(PlannedPanel planned, PanelEffect effect, Set<String> toldElsewhere) {
        this.planned = planned;
        this.advice = planned.advice();
        this.effect = effect;
        this.toldElsewhere = toldElsewhere;
        this.sentences = new Sentences(PlaceNames.on(advice.panel().facts()));
        this.words = new LayupWords(advice.panel().facts());
        this.unserved = new Unserved(planned, sentences);
    }

    void print(Page page) {
        page.title(planned.name() + ": " + Words.of(planned.verdict()));
        advice().forEach(line -> page.paragraph(INDENT, line));
        if (planned.verdict() == Verdict.ASK) {
            questions();
            holds();
        } else {
            holds();
            questions();
        }
        reasonsFor();
        leftBare();
        outvoted();
        entries.addAll("overruled", new OverruleText(sentences).lines(advice.panel()));
        if (advice.verdict() != Verdict.HOLD) {
            entries.addAll("not laid", unserved.told());
        }
        leftOut();
        PanelGainText.lines(effect.gains()).forEach(line -> entries.add("brings", line));
        if (!planned.layup().isEmpty()) {
            GainWords.trade(advice).ifPresent(line -> entries.add("brings", line));
        }
        new PanelEffectText(effect, sentences).lines().forEach(line -> entries.add("effect", line));
        work();
        advice.restsOn().forEach(a -> entries.add("rests on", restsOn(a)));
        entries.print(page, INDENT, LABELS);
    }

    private List<String> advice() {
        List<String> lines = new ArrayList<>(words.instructions(planned.layup()));
        advice.closings().stream().filter(c -> planned.verdict() != Verdict.HOLD && !isLeftOut(c)).map(words::closing)
                .forEach(lines::add);
        if (planned.layup().isEmpty()) {
            lines.add(0, nothing());
        }
        return lines.stream().filter(line -> !line.isEmpty()).toList();
    }

    /** Whether there is too little of something to close the hole. */
    private boolean isLeftOut(Closing closing) {
        return planned.leftOut().stream().anyMatch(out -> out.patch().place().equals(closing.want().place()));
    }

    private String nothing() {
        return switch (planned.verdict()) {
            case HOLD -> "Wait.";
            case ASK -> "Measure first; until then it stays bare.";
            default -> advice.wants().isEmpty() ? quiet() : "";
        };
    }

    /** Why nothing is wanted, in one sentence. */
    private String quiet() {
        List<Told> why = Told.of(advice.keptBareBy().stream(), sentences);
        return why.isEmpty() ? "Nothing speaks for a layer here." : why.get(0).sentence();
    }

    private void holds() {
        Told.of(advice.holds().stream(), sentences).forEach(t -> entries.add("until", t.advised(sentences)));
    }

    private void questions() {
        Map<String, List<Judgement>> byFact = advice.questions().stream().collect(Collectors.groupingBy(
                j -> ((Question) j.conclusion()).fact(), LinkedHashMap::new, Collectors.toList()));
        List<String> shared = new ArrayList<>();
        byFact.forEach((fact, asked) -> {
            List<Told> told = Told.of(asked.stream().map(this::ownReasons), sentences);
            if (told.isEmpty()) {
                shared.add(fact);
            } else {
                entries.add("measure", told.get(0).advised(sentences) + " (In the survey: " + fact + ".)");
            }
        });
        if (!shared.isEmpty()) {
            entries.add("measure", "As told below: " + English.and(shared) + ".");
        }
    }

    private void reasonsFor() {
        Map<Layer, List<WeighedWant>> byLayer = advice.served().stream().filter(w -> isLaid(w.layer()))
                .collect(Collectors.groupingBy(WeighedWant::layer, TreeMap::new, Collectors.toList()));
        byLayer.forEach((layer, wants) -> Told.of(wants.stream().map(WeighedWant::judgement), sentences)
                .forEach(t -> entries.add("for " + (layer == Layer.SEAL ? "closing" : layer.word()), t.sentence())));
    }

    private boolean isLaid(Layer layer) {
        return planned.layup().has(layer) || layer == Layer.SEAL;
    }

    /** Parts that stay bare inside what is covered. */
    private void leftBare() {
        if (!planned.layup().isEmpty()) {
            List<String> bare = Told.of(vetoes().filter(j -> !j.conclusion().place().isWholePanel() && !isBay(j)),
                    sentences).stream().map(Told::sentence).toList();
            if (!bare.isEmpty()) {
                entries.add("stays bare", String.join(" ", bare));
            }
        }
    }

    private Stream<Judgement> vetoes() {
        return advice.panel().own(Veto.class).stream();
    }

    private static boolean isBay(Judgement judgement) {
        return judgement.conclusion().place().part().startsWith("bay ");
    }

    private void outvoted() {
        Map<List<String>, List<WeighedWant>> byRules = advice.outvoted().stream().collect(Collectors.groupingBy(
                w -> w.vetoes().stream().flatMap(v -> v.reasons().stream()).map(r -> r.rule().id()).distinct().toList(),
                LinkedHashMap::new, Collectors.toList()));
        byRules.values().forEach(wants -> {
            String what = English.capital(unserved.wanted(wants)) + ": ";
            Stream<Judgement> vetoes = wants.stream().flatMap(w -> w.vetoes().stream()).distinct();
            List<Told> told = Told.of(vetoes, sentences);
            entries.add("outvoted", what + told.get(0).clause() + ". [" + told.get(0).rule().id() + "]");
            told.subList(1, told.size()).forEach(t -> entries.add("outvoted",
                    "And " + t.clause() + ". [" + t.rule().id() + "]"));
        });
    }

    private void leftOut() {
        new LeftOutWords(planned, sentences).lines().forEach(line -> entries.add("left out", line));
    }

    /** What may be done while a panel waits, and what comes when its wait is over. */
    private void work() {
        List<Judgement> duties = PanelWork.of(planned);
        boolean waits = planned.verdict() == Verdict.HOLD;
        work("work", duties.stream().filter(d -> !waits || PanelWork.standsAlone(d)).toList());
        work("afterwards", duties.stream().filter(d -> waits && !PanelWork.standsAlone(d)).toList());
        Told.of(advice.cautions().stream().map(this::ownReasons), sentences)
                .forEach(t -> entries.add("take care", t.advised(sentences)));
    }

    private void work(String label, List<Judgement> duties) {
        Told.of(duties.stream().map(this::ownReasons), sentences).forEach(t -> entries.add(label, t.advised(sentences)));
        List<String> shared = duties.stream().filter(d -> d.reasons().stream()
                .anyMatch(r -> toldElsewhere.contains(r.rule().id()))).map(d -> Words.of(PanelWork.work(d))).distinct()
                .toList();
        if (!shared.isEmpty()) {
            entries.add(label, "As told below: " + English.and(shared) + ".");
        }
    }

    /** The judgement with those of its reasons that are told here. */
    private Judgement ownReasons(Judgement judgement) {
        return new Judgement(judgement.conclusion(), judgement.reasons().stream()
                .filter(r -> !toldElsewhere.contains(r.rule().id())).toList());
    }

    private static String restsOn(Assumed assumed) {
        return "'" + assumed.fact() + "' taken as " + assumed.value().replace("degC", "°C") + ", because " + assumed.because() + ".";
    }
}
