package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import unthrum.Scenarios;
import unthrum.derive.PanelFacts;
import unthrum.drill.MadeVehicles;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.PanelAccount;
import unthrum.effect.PanelEffect;
import unthrum.effect.PanelGain;
import unthrum.effect.Patch;
import unthrum.effect.VehicleAccount;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.material.Catalogue;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.plan.Planner;
import unthrum.reasoning.Ladder;
import unthrum.reasoning.Scored;
import unthrum.reasoning.WeighedWant;

@DisplayName("One account of what layers bring: on ten thousand panels")
class OneAccountTest {

    private static final int VEHICLES = 250;
    /** Rounding of sums. */
    private static final double HAIR = 1e-9;

    @TempDir
    private Path folder;

    static List<String> scenarios() {
        return Scenarios.names();
    }

    private static VehicleAccount account(Plan plan) {
        List<PanelFacts> bundles = new ArrayList<>(List.of(plan.vehicle()));
        plan.panels().forEach(p -> bundles.add(p.advice().panel().facts()));
        return VehicleAccount.of(Scenarios.KNOWLEDGE, plan.survey(), bundles);
    }

    private static double gain(PanelEffect effect, VehicleAccount account) {
        return effect.gains().stream().mapToDouble(g -> account.weights().get(g.aim()) * g.taken().about()).sum();
    }

    @Test
    @DisplayName("no plan has less merit than bare metal, no loss of an aim goes untold, and a rung's loss is a difference of effects")
    void neverWorse() {
        int panels = 0;
        int laid = 0;
        int losses = 0;
        for (int v = 0; v < VEHICLES; v++) {
            Plan plan = Scenarios.PLANNER.plan(MadeVehicles.survey(v));
            VehicleAccount account = account(plan);
            for (PlannedPanel panel : plan.panels()) {
                PanelEffect effect = plan.effects().panel(panel.name()).orElseThrow();
                panels++;
                laid += panel.layup().isEmpty() ? 0 : 1;
                if (panel.advice().wants().stream().noneMatch(WeighedWant::isForSafety)) {
                    assertThat(gain(effect, account)).as(panel.name() + " of " + v).isGreaterThan(-HAIR);
                }
                losses += told(effect, panel);
                rungs(panel, account);
            }
        }
        System.out.println(panels + " panels, " + laid + " with layers, " + losses + " aims that lose, all told");
        assertThat(laid).isGreaterThan(panels / 10);
    }

    /** Every aim that loses, and by how much, stands in the panel's text. */
    private static int told(PanelEffect effect, PlannedPanel panel) {
        int losses = 0;
        List<String> lines = PanelGainText.lines(effect.gains());
        for (PanelGain gain : effect.gains()) {
            if (gain.taken().about() < -PanelGainText.TOLD) {
                losses++;
                assertThat(lines).as(panel.name()).anyMatch(l -> l.toLowerCase(java.util.Locale.ROOT)
                        .startsWith(unthrum.reading.Words.of(gain.aim())) && l.contains("lets "
                        + GainWords.share(-gain.taken().about()) + " more"));
            }
        }
        return losses;
    }

    /** What a layup of a rung is said to gain is what the account computes for the very same layup. */
    private static void rungs(PlannedPanel panel, VehicleAccount account) {
        Set<Place> closed = panel.advice().wants().stream().filter(w -> w.layer() == unthrum.material.Layer.SEAL
                && w.stands()).map(WeighedWant::place).collect(java.util.stream.Collectors.toSet());
        PanelAccount own = account.panel(panel.advice().panel().facts(), closed);
        Stream<Scored> rungs = panel.advice().ladder().stream().flatMap((Ladder l) -> Stream.of(l.decoupledBarrier(),
                l.barrierLaidDirect(), l.noBarrier()).flatMap(Optional::stream));
        rungs.forEach(rung -> {
            double effects = own.gains(rung.layup()).stream()
                    .mapToDouble(g -> account.weights().get(g.aim()) * g.taken().about()).sum();
            assertThat(rung.gain()).as(panel.name()).isCloseTo(effects - own.closing(), offset(HAIR));
        });
    }

    @Test
    @DisplayName("what shops call their materials changes no plan")
    void renamed() throws IOException {
        Catalogue renamed = renamedCatalogue();
        Planner other = new Planner(Scenarios.KNOWLEDGE, renamed);
        for (int v = 0; v < VEHICLES; v++) {
            List<String> one = layups(Scenarios.PLANNER.plan(MadeVehicles.survey(v)), "");
            assertThat(layups(other.plan(MadeVehicles.survey(v)), "z-")).as("vehicle " + v).isEqualTo(one);
        }
    }

    /** Every second name with a leading z, so that the order of names is another. */
    private Catalogue renamedCatalogue() throws IOException {
        try (InputStream in = Catalogue.class.getClassLoader().getResourceAsStream("unthrum/rules/materials.yaml")) {
            StringBuilder text = new StringBuilder();
            boolean second = false;
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                boolean name = line.startsWith("  - material: ");
                second ^= name;
                text.append(name && second ? line.replace("material: ", "material: z-") : line).append('\n');
            }
            return Catalogue.of(Files.writeString(folder.resolve("materials.yaml"), text));
        }
    }

    private static List<String> layups(Plan plan, String prefix) {
        return plan.panels().stream().map(p -> p.name() + p.verdict() + p.layup().layers().stream()
                .map(l -> l.material().material().replaceFirst("^" + prefix, "") + l.patches()).toList()).toList();
    }

    @Test
    @DisplayName("more damping and a heavier barrier laid direct never gain less")
    void more() {
        for (int v = 0; v < VEHICLES; v++) {
            Plan plan = Scenarios.PLANNER.plan(MadeVehicles.survey(v));
            VehicleAccount account = account(plan);
            for (PlannedPanel panel : plan.panels()) {
                PanelFacts facts = panel.advice().panel().facts();
                PanelAccount own = account.panel(facts, Set.of());
                PanelAccount.Under bare = own.under(Layup.NOTHING);
                for (Bay bay : facts.all(Bay.class).toList()) {
                    double before = 0;
                    for (double cover : new double[] {0.1, 0.25, 0.5, 0.75, 1}) {
                        double now = bare.damping(Scenarios.CATALOGUE.find("butyl-2").orElseThrow(), bay, cover);
                        assertThat(now).as(bay.place().toString()).isGreaterThanOrEqualTo(before - HAIR);
                        before = now;
                    }
                }
                double light = own.gain(all(facts, "vinyl-barrier-1.5"));
                double heavy = own.gain(all(facts, "vinyl-barrier-3"));
                assertThat(sound(own, all(facts, "vinyl-barrier-3"))).as(panel.name() + ", " + light + ", " + heavy)
                        .isGreaterThanOrEqualTo(sound(own, all(facts, "vinyl-barrier-1.5")) - HAIR);
            }
        }
    }

    private static double sound(PanelAccount account, Layup layup) {
        return account.gains(layup).stream().filter(g -> Scenarios.KNOWLEDGE.aim(g.aim()).heard().isPresent())
                .mapToDouble(g -> g.taken().about()).sum();
    }

    private static Layup all(PanelFacts facts, String material) {
        return new Layup(List.of(new Laid(Scenarios.CATALOGUE.find(material).orElseThrow(),
                List.of(new Patch(Place.of(facts.panel()), 1, facts.the(Panel.class).area())))));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    @DisplayName("every gain in a plan's text is found again in the JSON effect of the same layup")
    void textAndJson(String scenario) throws IOException {
        Plan plan = Scenarios.plan(scenario);
        String text = PlanText.of(plan, List.of(), 100, Style.PLAIN).replaceAll("\\s+", " ");
        int told = 0;
        for (JsonNode panel : new ObjectMapper().readTree(PlanJson.of(plan, List.of())).get("panels")) {
            for (JsonNode gain : panel.at("/effect/gains")) {
                double taken = gain.at("/taken/about").asDouble() / 100;
                if (Math.abs(taken) >= PanelGainText.TOLD) {
                    told++;
                    assertThat(text).contains(taken > 0 ? "takes " + GainWords.share(taken) + " of the "
                            + GainWords.share(gain.at("/bare/value").asDouble() / 100)
                            : "lets " + GainWords.share(-taken) + " more");
                }
            }
        }
        assertThat(told).isPositive();
        assertThat(text.split(" takes [0-9.]+ % of the | lets [0-9.]+ % more ").length - 1).isEqualTo(told);
    }
}
