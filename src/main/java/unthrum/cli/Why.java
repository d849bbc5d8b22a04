package unthrum.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.effect.Layup;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.plan.Planner;
import unthrum.reading.Problems;
import unthrum.reasoning.change.PanelTrial;
import unthrum.reasoning.change.Turned;
import unthrum.reasoning.change.WhatIf;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.report.CaseJson;
import unthrum.report.CaseText;
import unthrum.report.ChangesJson;
import unthrum.report.ChangesText;
import unthrum.report.WhatIfText;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@Command(name = "why", description = "The whole case for and against treating one panel.", customSynopsis =
        "unthrum why FILE PANEL [LAYER] [--if FACT=VALUE]... [--teach] [--changes] [--json] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum why van.yaml roof-middle%n  unthrum why van.yaml roof-middle damping --teach%n"
                + "  unthrum why van.yaml roof-middle --if 'clearance=9 mm' --if reach=open%n%n")
final class Why implements Runnable {

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", description = "A survey file.")
    private Path file;

    @Parameters(index = "1", paramLabel = "PANEL", description = "A panel's name.")
    private String panel;

    @Parameters(index = "2", paramLabel = "LAYER", arity = "0..1",
            description = "Only what concerns this layer, such as damping or 'wear face'.")
    private String layer;

    @Option(names = "--teach", description = "Say also why each rule holds, for an apprentice.")
    private boolean teach;

    @Option(names = "--if", paramLabel = "FACT=VALUE", description =
            "Show the panel as it would be, beside today's; may be given several times.")
    private List<String> edits = List.of();

    @Option(names = "--changes", description =
            "Show only what the panel does not get and why, what would change it, and how sure it is.")
    private boolean changes;

    @Option(names = "--json", description =
            "Print JSON (schema: unthrum schema case, or changes with --changes, or what-if with --if).")
    private boolean json;

    @Mixin
    private Look look = new Look();

    Why(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        int width = look.width(surroundings);
        if (changes && !edits.isEmpty()) {
            throw new WrongUse("give --if or --changes, not both: "
                    + "the one shows a panel as it might be, the other as it is");
        }
        Optional<Layer> only = Optional.ofNullable(layer).map(Why::layer);
        Survey survey = Surveys.read(List.of(file)).get(0);
        PanelEntry entry = Surveys.entry(survey, panel);
        Knowledge knowledge = Knowledge.load();
        Catalogue catalogue = Catalogue.load();
        try (PanelTrial trial = new PanelTrial(new RuleEngine(knowledge), catalogue, survey)) {
            if (!edits.isEmpty()) {
                whatIf(trial, entry, width);
                return;
            }
            Optional<Plan> plan = changes ? Optional.empty()
                    : Optional.of(new Planner(knowledge, catalogue).plan(survey));
            plan.ifPresent(p -> theCase(p, only, knowledge, width));
            if (changes || !json) {
                turned(Turned.of(trial, entry), only, plan.map(p -> Surveys.panel(p, panel).advice().layup()), knowledge,
                        width);
            }
        }
    }

    private void theCase(Plan plan, Optional<Layer> only, Knowledge knowledge, int width) {
        PlannedPanel planned = Surveys.panel(plan, panel);
        if (json) {
            surroundings.printUtf8(CaseJson.of(planned, plan.effects().panel(panel).orElseThrow(), knowledge));
        } else {
            surroundings.print(CaseText.of(planned, only, teach, knowledge, width, look.style(surroundings)));
        }
    }

    private void turned(Turned turned, Optional<Layer> only, Optional<Layup> planned, Knowledge knowledge, int width) {
        if (json) {
            surroundings.printUtf8(ChangesJson.of(turned, knowledge));
        } else {
            surroundings.print(ChangesText.of(turned, only, teach, planned, knowledge, width, look.style(surroundings)));
        }
    }

    private void whatIf(PanelTrial trial, PanelEntry entry, int width) {
        try {
            WhatIf whatIf = WhatIf.of(trial, entry, "--if", edits);
            if (json) {
                surroundings.printUtf8(ChangesJson.of(whatIf));
            } else {
                surroundings.print(WhatIfText.of(whatIf, width, look.style(surroundings)));
            }
        } catch (Problems e) {
            throw new WrongUse(e.first(Failures.ONE_SCREEN));
        }
    }

    private static Layer layer(String word) {
        List<Layer> layers = Arrays.stream(Layer.values()).filter(l -> l != Layer.ANY).toList();
        return layers.stream().filter(l -> l.word().equals(word.replace('-', ' '))).findFirst()
                .orElseThrow(() -> WrongUse.unknown("layer '" + word + "'", word,
                        layers.stream().map(Layer::word).toList()));
    }
}
