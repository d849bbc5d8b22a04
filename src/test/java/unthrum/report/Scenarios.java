package unthrum.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.survey.SurveyReader;

/** The plans of the shipped scenarios, each made once. */
final class Scenarios {

    static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Planner PLANNER = new Planner(KNOWLEDGE, Catalogue.load());
    private static final Map<Path, Plan> PLANS = new ConcurrentHashMap<>();

    private Scenarios() {
    }

    static List<Path> files() {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plan plan(Path file) {
        return PLANS.computeIfAbsent(file, f -> PLANNER.plan(SurveyReader.read(f)));
    }

    static Plan plan(String name) {
        return plan(Path.of("scenarios", name + ".yaml"));
    }
}
