package unthrum.effect;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Material;
import unthrum.reading.YamlReader;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.survey.Survey;

/** A vehicle of a few panels on which layups are tried. */
final class Workbench {

    static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Catalogue CATALOGUE = Catalogue.load();

    private final Survey survey;
    private final List<PanelFacts> bundles;

    private Workbench(String vehicle, String aims, String panels) {
        String text = "survey: workbench\nvehicle: {" + vehicle + "}\naims: [" + aims + "]\npanels:\n" + panels;
        this.survey = YamlReader.read("workbench",
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Survey.class);
        this.bundles = new Derivation(KNOWLEDGE).of(survey);
    }

    /** @param panels each a flow mapping such as '{panel: a, zone: roof, ...}' */
    static Workbench with(String vehicle, String aims, String... panels) {
        return new Workbench(vehicle, aims,
                Arrays.stream(panels).map(p -> "  - " + p + "\n").collect(Collectors.joining()));
    }

    static Material material(String name) {
        return CATALOGUE.find(name).orElseThrow();
    }

    PanelFacts panel(String name) {
        return bundles.stream().filter(b -> b.panel().equals(name)).findFirst().orElseThrow();
    }

    /** The panel with materials over a share of it, its holes open. */
    Treated laid(String name, double share, String... materials) {
        PanelFacts facts = panel(name);
        double area = facts.the(Panel.class).area() * share;
        return new Treated(facts, new Layup(Arrays.stream(materials).map(m -> new Laid(material(m),
                List.of(new Patch(Place.of(name), share, area)))).toList()), Set.of());
    }

    Treated bare(String name) {
        return laid(name, 1);
    }

    static Treated closed(Treated treated) {
        return new Treated(treated.facts(), treated.layup(), treated.facts().all(Opening.class).map(Opening::place)
                .collect(Collectors.toSet()));
    }

    /** The yardstick of the bare vehicle. */
    VehicleAccount account() {
        return VehicleAccount.of(KNOWLEDGE, survey, bundles);
    }

    PanelEffect effect(Treated treated) {
        return calculator().of(treated);
    }

    Effects effects(Treated... treated) {
        return calculator().of(List.of(treated));
    }

    private EffectCalculator calculator() {
        return EffectCalculator.of(KNOWLEDGE, survey, bundles.get(0), bundles.subList(1, bundles.size()));
    }
}
