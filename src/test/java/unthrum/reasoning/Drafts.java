package unthrum.reasoning;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import unthrum.reading.Words;
import unthrum.reading.YamlReader;
import unthrum.survey.Aim;
import unthrum.survey.Face;
import unthrum.survey.NoiseSource;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * Surveys for property tests, as the text that a fitter might write: each key stated in one of several ways or left
 * open.
 */
public final class Drafts {

    /** What stands for a key that is left open. */
    private static final String OPEN = "";
    private static final Map<String, List<String>> CHOICES = choices();

    /** One panel's keys and what is written for each. */
    public record Draft(Map<String, String> keys) {
        /** The same panel with another value for one key. */
        public Draft with(String key, String value) {
            Map<String, String> changed = new LinkedHashMap<>(keys);
            changed.put(key, value);
            return new Draft(changed);
        }

        /** The panel in YAML, its keys in the order that the random numbers give. */
        String text(String name, Random order) {
            List<String> stated = new ArrayList<>(List.of("panel: " + name));
            keys.forEach((key, value) -> {
                if (!value.equals(OPEN)) {
                    stated.add(key + ": " + value);
                }
            });
            Collections.shuffle(stated, order);
            return "  - {" + String.join(", ", stated) + "}\n";
        }
    }

    private Drafts() {
    }

    private static Map<String, List<String>> choices() {
        Map<String, List<String>> c = new LinkedHashMap<>();
        c.put("zone", words(Zone.values()));
        c.put("size", List.of("[700 mm, 500 mm]", "[1150 mm, 620 mm]", "[420 mm, 380 mm]", "[800 mm, 210 mm]"));
        c.put("skin", List.of(OPEN, "{metal: steel}", "{metal: steel, gauge: 0.7 mm}", "{metal: steel, gauge: 1 mm}",
                "{metal: aluminium, gauge: 1.2 mm}"));
        c.put("shape", List.of(OPEN, "{curve: flat}", "{curve: flat}", "{curve: crowned, rise: 6 mm}",
                "{curve: rolled, rise: 12 mm}"));
        c.put("ribs", List.of(OPEN, "none", "[{kind: box section, runs: across, at: 190 mm, width: 40 mm}]",
                "[{kind: bead, runs: along, at: 100 mm}]"));
        c.put("tap", List.of(OPEN, "rings", "rings", "rings", "dull", "dead", "not tapped"));
        c.put("clearance", List.of(OPEN, "0 mm", "1.5 mm", "2.5 mm", "4 mm", "5.5 mm", "7 mm", "9 mm", "12 mm", "18 mm",
                "26 mm", "45 mm"));
        c.put("clearance to", words(Face.values()));
        c.put("heat", List.of(OPEN, "none", "{from: sun, peak: 62 degC}", "{from: sun, peak: 88 degC}",
                "{from: exhaust, peak: 75 degC}", "{from: exhaust, peak: 112 degC}", "{from: engine, peak: 98 degC}",
                "{from: turbo, peak: 220 degC}", "{from: exhaust}"));
        c.put("reach", List.of(OPEN, "open", "open", "open", "part", "part, reachable: 20 %", "part, reachable: 60 %",
                "none"));
        c.put("openings", List.of(OPEN, "none", "[{kind: cable hole, size: 20 mm, state: open}, {kind: drain}]",
                "[{kind: gas vent, size: 80 mm}, {kind: tooling hole, size: 90 mm}]",
                "[{kind: tooling hole, state: open, must stay open: true}, {kind: grommet, state: open}]",
                "[{kind: service opening, size: 150 mm}, {kind: seam gap, size: 200 mm, state: open}]"));
        c.put("fixings", List.of(OPEN, "none", "[{kind: seat bolt, size: 40 mm}]", "[{kind: lining clip, count: 6}]"));
        c.put("moving", List.of(OPEN, "none", "[pedals]", "[window glass, door latch]"));
        c.put("covers", List.of(OPEN, "none", "[{kind: pump hatch, size: [150 mm, 120 mm]}]",
                "[{kind: service plug cover}]"));
        c.put("behind", List.of(OPEN, "none", "none", "none", "[loom, fuel line]", "[curtain airbag]",
                "[traction battery]", "[gas locker]"));
        c.put("wet", List.of(OPEN, "dry", "damp", "wet"));
        c.put("dries out", List.of(OPEN, "true", "false"));
        c.put("surface", List.of(OPEN, "{paint: sound, dirt: clean, rust: none, old: none}",
                "{paint: sound, dirt: clean, rust: none, old: none}", "{dirt: grease, rust: surface}", "{rust: live}",
                "{old: unknown pads}", "{paint: fresh, dirt: wax}", "{old: sound pads}"));
        c.put("traffic", List.of(OPEN, "none", "feet", "dragged loads", "carpet", "drawers"));
        c.put("near ear", List.of(OPEN, "true", "false"));
        c.put("near noise", words(NoiseSource.values()));
        c.put("lid", List.of(OPEN, OPEN, OPEN, "{holder: struts, margin: 2 kg}", "{holder: springs}"));
        c.put("lifts out", List.of(OPEN, "false", "true"));
        c.put("missing", List.of(OPEN, "none", "[heat shield]"));
        c.put("loose", List.of(OPEN, "none", "[cable]"));
        return c;
    }

    private static List<String> words(Enum<?>[] constants) {
        return Stream.concat(Stream.of(OPEN).filter(o -> !(constants[0] instanceof Zone)),
                Arrays.stream(constants).map(Words::of)).toList();
    }

    /** Every key stated in one of its ways, or left open. */
    public static Arbitrary<Draft> panels() {
        List<String> keys = List.copyOf(CHOICES.keySet());
        List<Arbitrary<String>> values = keys.stream().map(k -> Arbitraries.of(CHOICES.get(k))).toList();
        return Combinators.combine(values).as(chosen -> {
            Map<String, String> draft = new LinkedHashMap<>();
            for (int i = 0; i < keys.size(); i++) {
                draft.put(keys.get(i), chosen.get(i));
            }
            return new Draft(draft);
        });
    }

    /** The head of a survey: the vehicle and the client's aims. */
    public static Arbitrary<String> heads() {
        Arbitrary<String> drives = Arbitraries.of("petrol", "diesel", "hybrid");
        Arbitrary<String> uses = Arbitraries.of("[daily]", "[load carrying]", "[lived in]", "[daily, strip-down]");
        Arbitrary<String> colds = Arbitraries.of("", ", coldest: -20 degC", ", coldest: 9 degC");
        Arbitrary<List<Aim>> aims = Arbitraries.shuffle(Aim.values()).flatMap(all ->
                Arbitraries.integers().between(1, 4).map(n -> all.subList(0, n)));
        return Combinators.combine(drives, uses, colds, aims).as((drive, use, cold, wanted) ->
                "survey: generated\nvehicle: {body: van, drive: " + drive + ", use: " + use + cold + "}\naims: ["
                        + String.join(", ", wanted.stream().map(Words::of).toList()) + "]\npanels:\n");
    }

    /** The survey of these panels, called p0, p1 and so on, written in an order of its own for each seed. */
    public static Survey survey(String head, List<Draft> panels, long seed) {
        Random order = new Random(seed);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            texts.add(panels.get(i).text("p" + i, order));
        }
        Collections.shuffle(texts, order);
        byte[] text = (head + String.join("", texts)).getBytes(StandardCharsets.UTF_8);
        return YamlReader.read("generated", new ByteArrayInputStream(text), Survey.class);
    }
}
