package unthrum.benchmark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Planner;
import unthrum.reading.RecordPath;
import unthrum.reasoning.Advisor;
import unthrum.reasoning.change.Lever;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.Unknown;
import unthrum.reasoning.change.Unknowns;
import unthrum.reasoning.derive.Derivation;
import unthrum.reasoning.derive.PanelFacts;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/**
 * How long turning one panel over, and asking about 30 unknown facts, take against advice on the vehicle, all in one
 * run. Not a test: start it by hand from the test class path,
 * {@code java -cp target/test-classes:target/classes:LIBRARIES unthrum.benchmark.ChangesBenchmark}.
 */
final class ChangesBenchmark {

    private static final Path WORKSHOP = Path.of("scenarios", "travelling-bicycle-workshop.yaml");
    private static final List<String> BLANKED = List.of("clearance", "heat", "reach", "wet", "surface.rust");
    private static final int PANELS_BLANKED = 6;
    private static final int WARM_UP = 3;
    private static final int ROUNDS = 5;

    private final Knowledge knowledge = Knowledge.load();
    private final Catalogue catalogue = Catalogue.load();
    private final RuleEngine engine = new RuleEngine(knowledge);

    private ChangesBenchmark() {
    }

    public static void main(String[] arguments) {
        new ChangesBenchmark().run(SurveyReader.read(WORKSHOP));
    }

    private void run(Survey survey) {
        Survey blanked = blanked(survey);
        System.out.printf("%d panels; asked about %d unknown facts%n", survey.panels().size(), unknown(blanked));
        List<double[]> rounds = new ArrayList<>();
        for (int round = 0; round < WARM_UP + ROUNDS; round++) {
            PanelEntry panel = survey.panels().get(round % survey.panels().size());
            double[] times = {millis(() -> plan(survey)), millis(() -> adviceAlone(survey)),
                millis(() -> turned(survey, panel)), millis(() -> plan(blanked)), millis(() -> unknown(blanked))};
            if (round == 0) {
                report("cold", times);
            } else if (round >= WARM_UP) {
                rounds.add(times);
            }
        }
        report("warm, medians", medians(rounds));
    }

    private static void report(String name, double[] t) {
        System.out.printf("%s: plan %.0f ms (advice alone %.0f ms), turning one panel %.0f ms: why with changes takes "
                + "%.2f times advise (%.2f times without sharing); plan of the blanked %.0f ms, asking %.0f ms: %.2f times%n",
                name, t[0], t[1], t[2], (t[0] + t[2]) / t[0], (t[1] + t[2]) / t[1], t[3], t[4], t[4] / t[3]);
    }

    private Object plan(Survey survey) {
        return new Planner(knowledge, catalogue).plan(survey);
    }

    /** The facts, the rules and the layup of every panel, without sharing shelf, money and mass among them. */
    private Object adviceAlone(Survey survey) {
        List<PanelFacts> bundles = new Derivation(knowledge).of(survey);
        Advisor advisor = new Advisor(knowledge, catalogue);
        try (RuleSession session = engine.open()) {
            bundles.forEach(b -> session.state(b.panel(), b.facts()));
            var all = session.judgements(c -> true);
            return bundles.stream().skip(1).map(b -> advisor.advise(b, all.stream().filter(j -> j.conclusion().place()
                    .isVehicle() || j.conclusion().place().panel().equals(b.panel())).toList(), List.of())).toList();
        }
    }

    private Object turned(Survey survey, PanelEntry panel) {
        try (PanelTrial trial = new PanelTrial(engine, catalogue, survey)) {
            return Turned.of(trial, panel);
        }
    }

    private int unknown(Survey survey) {
        try (PanelTrial trial = new PanelTrial(engine, catalogue, survey)) {
            return new Unknowns(trial).of(survey).size();
        }
    }

    /** The survey with all that was assumed stated, but for five facts of six panels, which are taken away. */
    private Survey blanked(Survey survey) {
        List<PanelEntry> panels = new ArrayList<>();
        try (PanelTrial trial = new PanelTrial(engine, catalogue, survey)) {
            for (PanelEntry panel : survey.panels()) {
                PanelEntry known = stated(trial, panel);
                panels.add(panels.size() < PANELS_BLANKED ? blanked(known) : known);
            }
        }
        return new Survey(survey.survey(), survey.vehicle(), survey.aims(), survey.limits(), survey.stock(), panels);
    }

    /** The panel with all that was assumed written down. */
    private static PanelEntry stated(PanelTrial trial, PanelEntry panel) {
        PanelEntry known = panel;
        for (List<Unknown> left = new Unknowns(trial).of(known); !left.isEmpty(); left = new Unknowns(trial).of(known)) {
            Lever lever = left.get(0).lever();
            boolean tap = lever.key().equals("tap");
            known = lever.set(known, tap ? lever.words().get(0) : lever.today().orElse(List.of()));
        }
        return known;
    }

    private static PanelEntry blanked(PanelEntry panel) {
        PanelEntry blank = panel;
        for (String key : BLANKED) {
            RecordPath path = RecordPath.of(PanelEntry.class, key);
            blank = path.in(blank).isPresent() ? path.with(blank, null) : blank;
        }
        return blank;
    }

    private static double millis(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static double[] medians(List<double[]> rounds) {
        double[] medians = new double[rounds.get(0).length];
        for (int i = 0; i < medians.length; i++) {
            int column = i;
            double[] sorted = rounds.stream().mapToDouble(r -> r[column]).sorted().toArray();
            medians[i] = sorted[sorted.length / 2];
        }
        return Arrays.copyOf(medians, medians.length);
    }
}
