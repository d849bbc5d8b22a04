package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.derive.PanelFacts;
import unthrum.effect.PanelAccount;
import unthrum.effect.VehicleAccount;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Considered;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;
import unthrum.reasoning.WeighedWant;

@DisplayName("Why a material was not taken")
class TrueReasonsTest {

    private static final Pattern HEAVIER = Pattern.compile("([\\d.]+) kg heavier");
    private static final Pattern DEARER = Pattern.compile("(\\d+) \\w+ dearer");
    private static final Pattern LAID = Pattern.compile("what is laid takes ([\\d.]+) %");

    @Test
    @DisplayName("is told against what the plan really lays, and every figure in it is the difference of the two")
    void toldTruly() {
        int told = 0;
        int ofTheJob = 0;
        for (Path file : Scenarios.files()) {
            Plan plan = Scenarios.plan(file);
            for (PlannedPanel panel : plan.panels()) {
                PanelAdvice advice = panel.advice();
                laid(plan, advice);
                ofTheJob += advice.isOfTheJob() ? 1 : 0;
                for (Considered loser : advice.considered()) {
                    if (!loser.chosen() && loser.best().isPresent() && !advice.laid().layup().isEmpty()) {
                        figures(loser.best().get(), advice.laid(), GainWords.why(loser.best().get(), advice));
                        told++;
                    }
                }
            }
        }
        assertThat(told).isGreaterThan(100);
        assertThat(ofTheJob).as("panels for which the whole job decided").isPositive();
    }

    /** By the vehicle's account, aim by aim, apart from the search. */
    private static void laid(Plan plan, PanelAdvice advice) {
        List<PanelFacts> bundles = new ArrayList<>(List.of(plan.vehicle()));
        plan.panels().forEach(p -> bundles.add(p.advice().panel().facts()));
        VehicleAccount account = VehicleAccount.of(Scenarios.KNOWLEDGE, plan.survey(), bundles);
        Set<Place> closed = advice.wants().stream().filter(w -> w.layer() == Layer.SEAL && w.stands())
                .map(WeighedWant::place).collect(Collectors.toSet());
        PanelAccount own = account.panel(advice.panel().facts(), closed);
        double gains = own.gains(advice.laid().layup()).stream()
                .mapToDouble(g -> account.weights().get(g.aim()) * g.taken().about()).sum();
        assertThat(advice.laid().gain()).as(advice.name()).isCloseTo(gains - own.closing(), offset(1e-9));
    }

    private static void figures(Scored loser, Scored laid, String text) {
        double heavier = loser.layup().mass() - laid.layup().mass();
        double dearer = loser.layup().price() - laid.layup().price();
        Matcher kilograms = HEAVIER.matcher(text);
        if (kilograms.find()) {
            assertThat(Double.parseDouble(kilograms.group(1))).as(text).isCloseTo(heavier, offset(0.051));
        }
        Matcher money = DEARER.matcher(text);
        if (money.find()) {
            assertThat(Double.parseDouble(money.group(1))).as(text).isCloseTo(dearer, offset(0.51));
        }
        Matcher takes = LAID.matcher(text);
        if (takes.find()) {
            assertThat(Double.parseDouble(takes.group(1)) / 100).as(text).isCloseTo(laid.gain(), offset(0.00051));
            assertThat(loser.gain()).as(text).isLessThan(laid.gain());
        }
        assertThat(text.contains("there is nothing between them") && (heavier > 0.01 || dearer > 1)).as(text).isFalse();
        assertThat(text.contains("as much away") && Math.abs(loser.gain() - laid.gain()) > 0.0006).as(text).isFalse();
    }
}
