package unthrum;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import unthrum.audit.Auditor;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.Planner;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/** The shipped scenarios, each read and planned once for all tests, since some plans take seconds. */
public final class Scenarios {

    public static final Knowledge KNOWLEDGE = Knowledge.load();
    public static final Catalogue CATALOGUE = Catalogue.load();
    public static final Planner PLANNER = new Planner(KNOWLEDGE, CATALOGUE);
    public static final Auditor AUDITOR = new Auditor(KNOWLEDGE, CATALOGUE);

    private static final Map<Path, Survey> SURVEYS = new ConcurrentHashMap<>();
    private static final Map<Path, Plan> PLANS = new ConcurrentHashMap<>();

    private Scenarios() {
    }

    public static List<Path> files() {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<String> names() {
        return files().stream().map(f -> f.getFileName().toString().replace(".yaml", "")).toList();
    }

    public static Survey survey(Path file) {
        return SURVEYS.computeIfAbsent(file, SurveyReader::read);
    }

    /** The same for a client who sets no limits, by a fitter with an empty shelf. */
    public static Survey plenty(Path file) {
        Survey s = survey(file);
        return new Survey(s.survey(), s.vehicle(), s.aims(), Optional.empty(), Optional.empty(), s.panels());
    }

    public static Plan plan(Path file) {
        return PLANS.computeIfAbsent(file, f -> PLANNER.plan(survey(f)));
    }

    public static Plan plan(String name) {
        return plan(Path.of("scenarios", name + ".yaml"));
    }
}
