package unthrum.pieces;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import unthrum.Scenarios;
import unthrum.facts.Bay;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Case;
import unthrum.effect.Laid;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.survey.SurveyReader;

/** Plans in which every panel gets one material, whatever the rules would advise: for judging pieces alone. */
public final class Bench {

    private static final String HEAD = """
            survey: Bench
            vehicle: {body: van, drive: petrol, use: daily}
            aims: [road drumming]
            """;

    private Bench() {
    }

    /** A plain panel of a size in mm with further keys, one a line. */
    public static String panel(String name, int length, int width, String... keys) {
        StringBuilder yaml = new StringBuilder("  - panel: " + name + "\n    zone: floor\n    size: [" + length + " mm, "
                + width + " mm]\n    shape: flat\n");
        for (String key : keys) {
            yaml.append("    ").append(key).append('\n');
        }
        return yaml.toString();
    }

    /** The plan that the rules make of these panels. */
    public static Plan advised(String top, String... panels) {
        String yaml = HEAD + top + "panels:\n" + String.join("", panels);
        return Scenarios.PLANNER.plan(SurveyReader.read("bench.yaml",
                new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8))));
    }

    /** Every panel with one material: damping on each bay, anything else on the whole face. */
    public static Plan with(String material, double coverage, String... panels) {
        return with(material, coverage, advised("", panels));
    }

    static Plan with(String material, double coverage, Plan plan) {
        Material of = Scenarios.CATALOGUE.find(material).orElseThrow();
        List<PlannedPanel> laid = plan.panels().stream().map(p -> new PlannedPanel(p.advice(),
                new Layup(List.of(new Laid(of, patches(p.advice().panel(), of.layer(), coverage)))), List.of())).toList();
        return new Plan(plan.survey(), plan.vehicle(), plan.forAll(), laid, plan.shopping(), plan.totals(),
                plan.shares(), plan.effects());
    }

    private static List<Patch> patches(Case panel, Layer layer, double coverage) {
        if (layer != Layer.DAMPING) {
            return List.of(new Patch(unthrum.facts.Place.of(panel.panel()), coverage, panel.openArea(layer) * coverage));
        }
        List<Patch> patches = new ArrayList<>();
        panel.facts().all(Bay.class).forEach(b -> patches.add(new Patch(b.place(), coverage, b.area() * coverage)));
        return patches;
    }

    static Pieces pieces(Plan plan) {
        return PieceMaker.of(plan, Scenarios.KNOWLEDGE, Parting.FEWEST_PIECES);
    }

    public static CutPlan cut(Plan plan, Wishes wishes) {
        return CutPlanner.plan(plan, Scenarios.KNOWLEDGE, Scenarios.CATALOGUE, wishes);
    }

    public static CutPlan cut(String material, double coverage, String... panels) {
        return cut(with(material, coverage, panels), Wishes.usual());
    }
}
