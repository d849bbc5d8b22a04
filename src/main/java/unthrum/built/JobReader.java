package unthrum.built;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.material.Catalogue;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.reading.YamlReader;
import unthrum.survey.Overrule;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/**
 * Reads an as-built file and the survey that it names, or throws all {@link unthrum.reading.Problems} of the first
 * of the two that has any.
 */
public final class JobReader {
    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final LocalDate today;

    /** @param today no day in the files may lie after it */
    public JobReader(Knowledge knowledge, Catalogue catalogue, LocalDate today) {
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.today = today;
    }

    public Job read(Path file) {
        AtomicReference<Survey> survey = new AtomicReference<>();
        Built built = YamlReader.read(file, Built.class, (b, places) -> {
            if (places.sound("of")) {
                survey.set(survey(file.resolveSibling(b.of()), b.of(), places));
            }
            new BuiltCheck(b, survey.get(), places, today).all();
            if (survey.get() != null) {
                new PartsCheck(b, survey.get(), knowledge, catalogue, places).all();
            }
        });
        return new Job(survey.get(), built);
    }

    private Survey survey(Path file, String written, Places places) {
        if (!Files.isRegularFile(file)) {
            places.problem("of", "no file '" + written + "' beside this one", "the survey's file", "");
            return null;
        }
        return SurveyReader.read(file, this::overrules);
    }

    private void overrules(Survey survey, Places places) {
        List<String> ids = knowledge.cards().stream().map(RuleCard::id).toList();
        for (int i = 0; survey.panels() != null && i < survey.panels().size(); i++) {
            String path = "panels[" + i + "]";
            if (places.sound(path)) {
                List<Overrule> overrules = survey.panels().get(i).overrules().orElse(List.of());
                for (int j = 0; j < overrules.size(); j++) {
                    overrule(overrules.get(j), path + ".overrules[" + j + "]", ids, places);
                }
            }
        }
    }

    private void overrule(Overrule overrule, String path, List<String> ids, Places places) {
        if (!ids.contains(overrule.rule())) {
            places.problem(path + ".rule", "no rule '" + overrule.rule() + "'", "the id of a rule",
                    Nearest.remedy(overrule.rule(), ids));
        }
        if (overrule.when().isAfter(today)) {
            places.problem(path + ".when", "the day " + overrule.when() + ", which is to come",
                    "no day after " + today, "");
        }
    }
}
