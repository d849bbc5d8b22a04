package unthrum.knowledge;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import unthrum.reading.Check;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.survey.Overrule;
import unthrum.survey.Survey;

/** Reports overrules of rules that there are not, and days that are to come. */
public final class OverruleCheck implements Check<Survey> {
    private final Supplier<Collection<RuleCard>> cards;
    private final LocalDate today;

    /**
     * @param cards asked only where a survey overrules something
     * @param today no decision may lie after it
     */
    public OverruleCheck(Supplier<Collection<RuleCard>> cards, LocalDate today) {
        this.cards = cards;
        this.today = today;
    }

    @Override
    public void check(Survey survey, Places places) {
        for (int i = 0; survey.panels() != null && i < survey.panels().size(); i++) {
            String path = "panels[" + i + "]";
            if (places.sound(path)) {
                List<Overrule> overrules = survey.panels().get(i).overrules().orElse(List.of());
                for (int j = 0; j < overrules.size(); j++) {
                    overrule(overrules.get(j), path + ".overrules[" + j + "]", places);
                }
            }
        }
    }

    private void overrule(Overrule overrule, String path, Places places) {
        List<String> ids = cards.get().stream().map(RuleCard::id).toList();
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
