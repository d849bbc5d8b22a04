package unthrum.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.OverruleCheck;
import unthrum.material.Catalogue;
import unthrum.material.StockCheck;
import unthrum.plan.Patience;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.plan.Planner;
import unthrum.reading.Check;
import unthrum.reading.Problems;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/** Reads survey files and plans them. */
final class Surveys {

    private Surveys() {
    }

    /** The surveys in the order of their files; the problems of all files are reported together. */
    static List<Survey> read(List<Path> files) {
        return read(files, Knowledge::load);
    }

    private static List<Survey> read(List<Path> files, Supplier<Knowledge> knowledge) {
        List<Survey> surveys = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        Check<Survey> check = new OverruleCheck(() -> knowledge.get().cards(), LocalDate.now())
                .and(new StockCheck(Catalogue::load));
        for (Path file : files) {
            try {
                surveys.add(SurveyReader.read(file, check));
            } catch (Problems e) {
                problems.add(e.first(Failures.ONE_SCREEN));
            }
        }
        if (!problems.isEmpty()) {
            throw new WrongUse(String.join("\n", problems));
        }
        return surveys;
    }

    static List<Plan> plans(List<Path> files) {
        return plans(files, Patience.usual());
    }

    /** The rules are set up while the files are read. */
    static List<Plan> plans(List<Path> files, Patience patience) {
        CompletableFuture<Knowledge> knowledge = CompletableFuture.supplyAsync(Knowledge::load);
        List<Survey> surveys = read(files, knowledge::join);
        Catalogue catalogue = Catalogue.load();
        Planner planner = new Planner(knowledge.join(), catalogue);
        return surveys.stream().map(survey -> planner.plan(survey, patience)).toList();
    }

    /** The panel of that name in the survey; where there is none, wrong use with the names that there are. */
    static PanelEntry entry(Survey survey, String name) {
        return survey.panels().stream().filter(p -> p.panel().equals(name)).findFirst()
                .orElseThrow(() -> unknown(survey, name));
    }

    /** The panel of that name; where there is none, wrong use with the names that there are. */
    static PlannedPanel panel(Plan plan, String name) {
        return plan.panel(name).orElseThrow(() -> unknown(plan.survey(), name));
    }

    private static WrongUse unknown(Survey survey, String panel) {
        return WrongUse.unknown("panel '" + panel + "' in '" + survey.survey() + "'", panel,
                survey.panels().stream().map(PanelEntry::panel).toList());
    }
}
