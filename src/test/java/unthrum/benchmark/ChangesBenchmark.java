package unthrum.benchmark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
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
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.effect.VehicleAccount;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/**
 * How long turning one panel over, and asking about 30 unknown facts, take against advice on the vehicle, all in one
 * run: in this process, warm, in wall time and in the processor time of all its threads, which a busy machine blurs
 * less; and as whole processes, as a fitter starts them, if {@code target/unthrum.jar} is there. Advice is measured
 * without sharing what is scarce among panels, which takes longer than all else. Not a test: start it by hand from the
 * test class path, {@code java -cp target/test-classes:target/classes:LIBRARIES unthrum.benchmark.ChangesBenchmark}.
 */
final class ChangesBenchmark {

    private static final Path WORKSHOP = Path.of("scenarios", "travelling-bicycle-workshop.yaml");
    private static final List<String> BLANKED = List.of("clearance", "heat", "reach", "wet", "surface.rust");
    private static final int PANELS_BLANKED = 6;
    private static final int WARM_UP = 20;
    private static final int ROUNDS = 21;
    private static final Path JAR = Path.of("target", "unthrum.jar");
    private static final int STARTS = 3;
    /** Walks over all panels in an order that mixes the zones. */
    private static final int STRIDE = 7;

    private final Knowledge knowledge = Knowledge.load();
    private final Catalogue catalogue = Catalogue.load();
    private final RuleEngine engine = new RuleEngine(knowledge);

    private ChangesBenchmark() {
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        new ChangesBenchmark().run(SurveyReader.read(WORKSHOP));
        if (Files.exists(JAR)) {
            processes();
        }
    }

    private void run(Survey survey) {
        Survey blanked = blanked(survey);
        System.out.printf("%d panels; asked about %d unknown facts%n", survey.panels().size(), unknown(blanked));
        List<Time> advice = new ArrayList<>();
        List<Time> turning = new ArrayList<>();
        List<Time> asking = new ArrayList<>();
        for (int round = 0; round < WARM_UP + ROUNDS; round++) {
            PanelEntry panel = survey.panels().get(round * STRIDE % survey.panels().size());
            advice.add(Time.of(() -> adviceAlone(survey)));
            turning.add(Time.of(() -> turned(survey, panel)));
            asking.add(Time.of(() -> unknown(blanked)));
        }
        report("in wall time", advice, turning, asking, Time::wall);
        report("in processor time", advice, turning, asking, Time::processor);
        System.out.printf("plan with sharing, once: %.0f ms%n", Time.of(() -> plan(survey)).wall);
    }

    private static void report(String how, List<Time> advice, List<Time> turning, List<Time> asking,
                               ToDoubleFunction<Time> of) {
        double a = median(advice, of);
        double t = median(turning, of);
        double q = median(asking, of);
        System.out.printf("warm, medians %s: advice without sharing %.0f ms; turning one panel %.0f ms, %.2f times, "
                + "with its advice before %.2f times; asking %.0f ms, %.2f times%n", how, a, t, t / a, (a + t) / a, q,
                q / a);
    }

    private static double median(List<Time> rounds, ToDoubleFunction<Time> of) {
        double[] sorted = rounds.stream().skip(WARM_UP).mapToDouble(of).sorted().toArray();
        return sorted[sorted.length / 2];
    }

    /** What a fitter waits for: start, reading, thinking and printing; where things are scarce and where nothing is. */
    private static void processes() throws IOException, InterruptedException {
        processes("advise with sharing", WORKSHOP);
        Path open = Files.createTempFile("open", ".yaml");
        try {
            YAMLMapper yaml = new YAMLMapper();
            yaml.writeValue(open.toFile(), open(yaml.readTree(WORKSHOP.toFile())));
            processes("advise with nothing scarce and facts taken away", open);
        } finally {
            Files.delete(open);
        }
    }

    private static void processes(String what, Path survey) throws IOException, InterruptedException {
        double advise = process("advise", survey.toString());
        double why = process("why", survey.toString(), "roof-middle", "--changes");
        double ask = process("ask", survey.toString());
        System.out.printf("whole processes, fastest of %d: %s %.0f ms; why --changes %.0f ms, %.2f "
                + "times; ask %.0f ms, %.2f times%n", STARTS, what, advise, why, why / advise, ask, ask / advise);
    }

    /** Without limits and stock, and without five facts of six panels, whether they were stated or not. */
    private static JsonNode open(JsonNode survey) {
        ((ObjectNode) survey).remove(List.of("limits", "stock"));
        for (int i = 0; i < PANELS_BLANKED; i++) {
            for (String key : BLANKED) {
                String[] path = key.split("\\.");
                JsonNode holder = path.length == 1 ? survey.at("/panels/" + i) : survey.at("/panels/" + i + "/" + path[0]);
                if (holder instanceof ObjectNode entry) {
                    entry.remove(path[path.length - 1]);
                }
            }
        }
        return survey;
    }

    private static double process(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("java", "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        double fastest = Double.POSITIVE_INFINITY;
        for (int start = 0; start < STARTS; start++) {
            long began = System.nanoTime();
            int code = new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.INHERIT).start().waitFor();
            if (code != 0) {
                throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
            }
            fastest = Math.min(fastest, (System.nanoTime() - began) / 1e6);
        }
        return fastest;
    }

    private Object plan(Survey survey) {
        return new Planner(knowledge, catalogue).plan(survey);
    }

    /** The facts, the rules and the layup of every panel, without sharing shelf, money and mass among them. */
    private Object adviceAlone(Survey survey) {
        List<PanelFacts> bundles = new Derivation(knowledge).of(survey);
        Advisor advisor = new Advisor(knowledge, catalogue, VehicleAccount.of(knowledge, survey, bundles));
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

    /** How long something took, in ms. */
    private record Time(double wall, double processor) {

        private static final OperatingSystemMXBean PROCESS =
                (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

        static Time of(Runnable work) {
            long began = System.nanoTime();
            long used = PROCESS.getProcessCpuTime();
            work.run();
            return new Time((System.nanoTime() - began) / 1e6, (PROCESS.getProcessCpuTime() - used) / 1e6);
        }
    }
}
