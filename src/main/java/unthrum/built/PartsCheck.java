package unthrum.built;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import unthrum.built.BuiltPanel.FittedLayer;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Opening;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.reading.Nearest;
import unthrum.reading.Places;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.survey.Survey;

/** Reports materials that the catalogue does not have, and bays, fixings and holes that the panel does not have. */
final class PartsCheck {
    private final Built built;
    private final Map<String, PanelFacts> facts;
    private final Catalogue catalogue;
    private final Places places;

    PartsCheck(Built built, Survey survey, Knowledge knowledge, Catalogue catalogue, Places places) {
        this.built = built;
        this.facts = new Derivation(knowledge).of(survey).stream()
                .collect(Collectors.toMap(PanelFacts::panel, Function.identity()));
        this.catalogue = catalogue;
        this.places = places;
    }

    void all() {
        for (int i = 0; built.panels() != null && i < built.panels().size(); i++) {
            String path = "panels[" + i + "]";
            boolean readable = built.panels().get(i) != null && places.sound(path + ".layers")
                    && places.sound(path + ".panel") && places.sound(path + ".done");
            if (readable && facts.containsKey(built.panels().get(i).panel())) {
                panel(built.panels().get(i), facts.get(built.panels().get(i).panel()), path);
            }
        }
    }

    private void panel(BuiltPanel panel, PanelFacts known, String path) {
        List<String> bays = parts(known, Bay.class);
        List<String> parts = known.facts().stream().map(f -> f.place().part()).filter(p -> !p.isEmpty()).distinct()
                .toList();
        for (int i = 0; i < panel.layers().orElse(List.of()).size(); i++) {
            FittedLayer layer = panel.layers().get().get(i);
            String at = path + ".layers[" + i + "]";
            catalogue.find(layer.material(), at + ".material", places);
            known(layer.at(), bays, at + ".at", "a bay");
            known(layer.over(), parts.stream().filter(p -> !bays.contains(p)).toList(), at + ".over",
                    "a rib, fixing, hole or cover");
        }
        for (int i = 0; i < panel.done().orElse(List.of()).size(); i++) {
            known(panel.done().get().get(i).at(), parts, path + ".done[" + i + "].at", "a part");
        }
        known(panel.closed(), parts(known, Opening.class), path + ".closed", "a hole");
        int taps = panel.tapAfter().map(List::size).orElse(0);
        if (taps > 1 && taps > bays.size()) {
            places.problem(path + ".tap after", taps + " taps on " + (bays.size() == 1 ? "one bay" : bays.size() + " bays"),
                    "one word for the panel, or one for each bay", "");
        }
    }

    private static List<String> parts(PanelFacts known, Class<? extends Fact> kind) {
        return known.all(kind).map(f -> f.place().part()).toList();
    }

    private void known(Optional<List<String>> written, List<String> known, String path, String what) {
        for (int i = 0; i < written.orElse(List.of()).size(); i++) {
            String part = written.get().get(i);
            if (!known.contains(part)) {
                String names = known.isEmpty() ? "; it has none" : ": " + String.join(", ", known);
                places.problem(path + "[" + i + "]", "no '" + part + "' on the panel", what + " of the panel" + names,
                        remedy(part, known));
            }
        }
    }

    private static String remedy(String written, List<String> known) {
        List<String> several = List.of(written.split(", *"));
        return several.size() > 1 && known.containsAll(several) ? "write '[" + String.join(", ", several) + "]'"
                : Nearest.remedy(written, known);
    }
}
