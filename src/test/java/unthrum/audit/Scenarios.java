package unthrum.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.survey.SurveyReader;

/** The plans of the shipped scenarios, made once. */
final class Scenarios {
    static final Knowledge KNOWLEDGE = Knowledge.load();
    static final Catalogue CATALOGUE = Catalogue.load();
    static final Planner PLANNER = new Planner(KNOWLEDGE, CATALOGUE);
    static final Auditor AUDITOR = new Auditor(KNOWLEDGE, CATALOGUE);
    private static final Map<String, Plan> PLANS = new LinkedHashMap<>();

    private Scenarios() {
    }

    static List<String> names() {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(Files::isRegularFile).map(f -> f.getFileName().toString().replace(".yaml", "")).sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plan plan(String name) {
        return PLANS.computeIfAbsent(name, n -> PLANNER.plan(SurveyReader.read(Path.of("scenarios", n + ".yaml"))));
    }
}
