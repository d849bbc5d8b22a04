package unthrum.drill;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import unthrum.reading.Words;
import unthrum.survey.Aim;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/** Makes the survey of one plausible panel from a number: the same number, the same panel. */
public final class PanelMaker {

    private static final int MOST_AIMS = 3;
    private static final int STEP = 10;
    private static final int RIB_WIDTH = 40;
    private static final int FROM_EDGE = 60;

    private static final UsualPanel.File USUAL = UsualPanel.file();
    private static final List<String> TAPS = List.of("rings", "rings", "rings", "rings", "dull", "dull", "dead");
    private static final int NOT_TAPPED_ONE_IN = 20;

    private final Random random;
    private final UsualPanel usual;

    private PanelMaker(Random random) {
        this.random = random;
        this.usual = pick(USUAL.panels());
    }

    /** The survey of the panel with that number, as the reader of every survey takes it. */
    public static Survey survey(long number) {
        byte[] text = text(number).getBytes(StandardCharsets.UTF_8);
        return SurveyReader.read("practice panel " + number, new ByteArrayInputStream(text));
    }

    /** The same as a file might write it. */
    public static String text(long number) {
        // neighbouring seeds give alike first values; the first is thrown away
        Random random = new Random(number);
        random.nextLong();
        return new PanelMaker(random).write(number);
    }

    private String write(long number) {
        List<String> aims = new ArrayList<>(List.of(Aim.values()).stream().map(Words::of).toList());
        Collections.shuffle(aims, random);
        String use = pick(List.of("daily", "daily", "load carrying", "lived in", "strip-down"));
        StringBuilder text = new StringBuilder("survey: Practice panel " + number + "\nvehicle: {body: "
                + pick(usual.bodies()) + ", drive: " + pick(List.of("petrol", "diesel")) + ", use: " + use
                + ", year: " + between(List.of(1995, 2020), 1) + ", payload left: 400 kg"
                + (use.equals("lived in") ? ", indoor: {temperature: 19 degC, humidity: 60 %}" : "")
                + ", coldest: " + pick(List.of("-15", "-5", "2")) + " degC}\naims: ["
                + String.join(", ", aims.subList(0, 1 + random.nextInt(MOST_AIMS))) + "]\npanels:\n");
        String lead = "  - ";
        for (Map.Entry<String, String> key : panel().entrySet()) {
            text.append(lead).append(key.getKey()).append(": ").append(key.getValue()).append('\n');
            lead = "    ";
        }
        return text.toString();
    }

    private Map<String, String> panel() {
        int length = between(usual.length(), STEP);
        int width = between(usual.width(), STEP);
        int ribs = pick(usual.ribs());
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("panel", usual.zone().replace(' ', '-'));
        keys.put("zone", usual.zone());
        keys.put("size", "[" + length + " mm, " + width + " mm]");
        keys.put("ribs", ribs == 0 ? "none"
                : list(IntStream.rangeClosed(1, ribs).mapToObj(i -> rib(length * i / (ribs + 1)))));
        keys.put("tap", list(IntStream.rangeClosed(0, ribs).mapToObj(i -> tap())));
        keys.put("fixings", usual.fixing().filter(f -> random.nextBoolean()).map(f -> fixings(f, length, width))
                .orElse("none"));
        Map<String, List<String>> others = new LinkedHashMap<>(USUAL.anywhere());
        others.putAll(usual.keys());
        others.forEach((key, values) -> keys.put(key, pick(values)));
        String reach = keys.get("reach");
        if (reach.startsWith("part")) {
            keys.put("reach", "part");
            keys.put("reachable", reach.substring(reach.lastIndexOf(':') + 2));
        }
        return keys;
    }

    private String rib(int at) {
        return "{kind: " + usual.rib() + ", runs: across, at: " + at + " mm, width: " + RIB_WIDTH + " mm}";
    }

    private String tap() {
        return random.nextInt(NOT_TAPPED_ONE_IN) == 0 ? "not tapped" : pick(TAPS);
    }

    /** Two of them at the ends of the panel. */
    private String fixings(String kind, int length, int width) {
        int across = FROM_EDGE + random.nextInt(width - 2 * FROM_EDGE) / STEP * STEP;
        return list(IntStream.of(FROM_EDGE, length - FROM_EDGE)
                .mapToObj(along -> "{kind: " + kind + ", size: 40 mm, count: 1, at: [" + along + " mm, " + across
                        + " mm]}"));
    }

    private static String list(java.util.stream.Stream<String> items) {
        return "[" + String.join(", ", items.toList()) + "]";
    }

    private int between(List<Integer> range, int step) {
        return range.get(0) + random.nextInt((range.get(1) - range.get(0)) / step + 1) * step;
    }

    private <T> T pick(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }
}
