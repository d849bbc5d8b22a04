package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import unthrum.facts.Fact;
import unthrum.knowledge.RuleText;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Components;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("The numbers that rules compute limits from")
class OneWayTest {

    private static final List<Path> FILES = Vehicles.FILES;
    private static final Pattern TERM = Pattern.compile("\\$(\\w+)\\.(\\w+)\\(\\)");
    /** These follow from several facts at once, so that the search judges every point at which they move. */
    private static final Set<String> JUDGED_EVERYWHERE = Set.of("Bay.enoughCover", "Sun.metal");
    private static final Set<String> READ = read();

    /** Every component of a fact that some consequence computes with, as 'Room.clearance'. */
    private static Set<String> read() {
        Set<String> read = new HashSet<>();
        for (RuleText rule : RuleText.shipped()) {
            for (String consequence : rule.consequences()) {
                for (Matcher term = TERM.matcher(consequence); term.find();) {
                    String kind = rule.bound().get(term.group(1));
                    if (kind != null && !kind.equals("Threshold") && !term.group(2).equals("place")) {
                        read.add(kind + "." + term.group(2));
                    }
                }
            }
        }
        return read;
    }

    @Test
    @DisplayName("are read off the rules: clearance, peak and margin are among them, and those judged everywhere")
    void few() {
        assertThat(READ).contains("Room.clearance", "Heat.peak", "Lid.margin").containsAll(JUDGED_EVERYWHERE);
    }

    @ParameterizedTest
    @FieldSource("FILES")
    @DisplayName("move one at a time and all one way along the scale of a fact, so that what they admit is nested")
    void oneWay(Path file) {
        Survey survey = Vehicles.survey(file);
        int moved = 0;
        try (PanelTrial trial = Vehicles.trial(survey)) {
            for (PanelEntry panel : survey.panels()) {
                for (Lever lever : trial.levers(panel)) {
                    if (lever.isScale()) {
                        Map<String, List<Double>> along = along(trial, panel, lever);
                        along.values().removeIf(values -> values.stream().distinct().count() < 2);
                        assertThat(along).as("%s of %s", lever.name(), panel.panel()).hasSizeLessThan(2);
                        along.values().forEach(values -> assertThat(isSorted(values))
                                .as("%s of %s", lever.name(), panel.panel()).isTrue());
                        moved += along.size();
                    }
                }
            }
        }
        assertThat(moved).isGreaterThan(survey.panels().size());
    }

    private static Map<String, List<Double>> along(PanelTrial trial, PanelEntry panel, Lever lever) {
        List<Object> values = new ArrayList<>(lever.scale(false));
        java.util.Collections.reverse(values);
        values.addAll(lever.scale(true));
        Map<String, List<Double>> along = new TreeMap<>();
        for (Object value : values) {
            PanelFacts facts = trial.facts(lever.set(panel, value));
            for (Fact fact : facts.facts()) {
                String kind = fact.getClass().getSimpleName();
                READ.stream().filter(r -> r.startsWith(kind + ".")).filter(r -> !JUDGED_EVERYWHERE.contains(r))
                        .forEach(r -> along.computeIfAbsent(
                        r + " " + fact.place(), k -> new ArrayList<>())
                        .add((Double) Components.value(fact, r.substring(kind.length() + 1))));
            }
        }
        return along;
    }

    private static boolean isSorted(List<Double> values) {
        List<Double> up = values.stream().sorted().toList();
        List<Double> down = values.stream().sorted(java.util.Comparator.reverseOrder()).toList();
        return values.equals(up) || values.equals(down);
    }
}
