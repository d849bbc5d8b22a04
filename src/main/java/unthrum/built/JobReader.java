package unthrum.built;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.OverruleCheck;
import unthrum.material.Catalogue;
import unthrum.material.StockCheck;
import unthrum.reading.Places;
import unthrum.reading.Problem;
import unthrum.reading.Problems;
import unthrum.reading.YamlReader;
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
        try {
            return job(file);
        } catch (Problems e) {
            Optional<Problem> survey = e.all().stream().filter(p -> p.found().equals("unknown key 'survey'")).findFirst();
            throw survey.map(p -> Problems.of(List.of(new Problem(p.file(), p.line(), p.column(), "a survey",
                    "an as-built file, which names its survey under 'of'",
                    "start one with 'unthrum jobcard SURVEY --as-built FILE'")))).orElse(e);
        }
    }

    private Job job(Path file) {
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
        return SurveyReader.read(file, new OverruleCheck(knowledge::cards, today).and(new StockCheck(() -> catalogue)));
    }
}
