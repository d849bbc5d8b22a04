package unthrum.drill;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What panels of one zone are usually like, as a fitter would write them: for every key the values that it may have,
 * the usual ones several times. Invented, after common practice.
 *
 * @param bodies the bodies that have such a panel
 * @param length from and to, along the panel, in mm
 * @param width  from and to, across the panel, in mm
 * @param ribs   how many ribs may run across it
 * @param rib    what such a rib is
 * @param fixing what is fixed on it, if anything is
 * @param keys   the values of the survey's other keys
 */
record UsualPanel(String zone, List<String> bodies, List<Integer> length, List<Integer> width, List<Integer> ribs,
                  String rib, String fixing, Map<String, List<String>> keys) {

    private static final List<String> ANY_BODY = List.of("van", "high-roof van", "hatchback", "saloon", "bus");
    private static final List<String> TALL = List.of("van", "high-roof van", "bus");
    private static final List<String> CARS = List.of("hatchback", "saloon", "estate");
    private static final String HOLE = "{kind: cable hole, size: 20 mm, state: open}";
    private static final String DRAIN = "{kind: drain, size: 8 mm, count: 2, state: open}";

    /** One of each kind. */
    static final List<UsualPanel> ALL = List.of(
            new UsualPanel("roof", ANY_BODY, List.of(600, 1400), List.of(900, 1300), List.of(0, 1, 1, 2), "top hat",
                    "lining clip", keys(
                    "shape", "{curve: crowned, rise: 6 mm} | {curve: crowned, rise: 18 mm} | flat",
                    "clearance", "6 mm | 9 mm | 14 mm | 24 mm", "clearance to", "lining",
                    "heat", "{from: sun, peak: 78 degC} | {from: sun, peak: 86 degC}",
                    "openings", "none | none | [{kind: vent, size: 400 mm, state: open}] | [" + HOLE + "]",
                    "lining on ribs", "true | false", "behind", "none | none | none | [curtain airbag, loom] | [loom]",
                    "wet", "dry | dry | damp", "dries out", "true | false", "near ear", "true | false",
                    "near noise", "wind | none")),
            new UsualPanel("door", CARS, List.of(700, 1100), List.of(450, 560), List.of(0, 0, 1), "bead", "", keys(
                    "shape", "{curve: crowned, rise: 16 mm} | {curve: crowned, rise: 6 mm}",
                    "clearance", "60 mm | 45 mm", "clearance to", "window glass",
                    "heat", "{from: sun, peak: 60 degC}",
                    "openings", "[" + DRAIN + ", {kind: service opening, size: 280 mm, state: open}] | [" + DRAIN + "]",
                    "moving", "[window glass, window regulator, door latch]", "behind", "none", "wet", "wet",
                    "dries out", "true", "near ear", "true | true | false", "near noise", "wind",
                    "missing", "none | none | [door membrane]", "loose", "none | [rod]")),
            new UsualPanel("floor", ANY_BODY, List.of(550, 1200), List.of(450, 900), List.of(0, 1, 1, 2), "bead",
                    "seat bolt", keys(
                    "shape", "flat", "clearance", "4 mm | 8 mm | 8 mm | 12 mm | 20 mm",
                    "clearance to", "moulded mat | carpet | floor board",
                    "heat", "none | none | {from: exhaust, peak: 75 degC} | {from: exhaust, peak: 105 degC}",
                    "openings", "none | [" + DRAIN + "] | [{kind: empty grommet hole, size: 28 mm, state: open}, " + DRAIN
                            + "]",
                    "moving", "none | [seat travel]", "behind", "none | none | [fuel line] | [brake line]",
                    "wet", "dry | dry | damp", "dries out", "true | false", "traffic", "carpet | feet | mat | drawers",
                    "near ear", "false", "near noise", "road | exhaust | tyres | none",
                    "missing", "none | none | none | [heat shield]")),
            new UsualPanel("footwell", CARS, List.of(480, 620), List.of(400, 520), List.of(0, 1), "bead", "", keys(
                    "shape", "flat", "clearance", "3 mm | 7 mm | 10 mm | 16 mm", "clearance to", "moulded mat | carpet",
                    "heat", "none | {from: engine, peak: 60 degC} | {from: exhaust, peak: 90 degC}",
                    "openings", "none | [{kind: empty grommet hole, size: 28 mm, state: open}] | [" + HOLE
                            + ", {kind: grommet, size: 30 mm, state: closed}]",
                    "moving", "none | [pedals]", "behind", "none", "wet", "dry | damp", "dries out", "true | false",
                    "traffic", "feet", "near ear", "false", "near noise", "road | engine")),
            new UsualPanel("bulkhead", ANY_BODY, List.of(900, 1400), List.of(450, 650), List.of(0, 1), "bead", "", keys(
                    "shape", "flat", "clearance", "6 mm | 12 mm | 22 mm | 35 mm", "clearance to", "trim",
                    "heat", "{from: engine, peak: 95 degC} | {from: engine, peak: 78 degC} | {from: turbo, peak: 190 degC}",
                    "reach", "open | open | part, reachable: 60 % | part, reachable: 35 % | none",
                    "openings", "[" + HOLE + ", {kind: pedal box hole, size: 120 mm, state: open}] | [" + HOLE
                            + ", " + DRAIN + "] | [{kind: grommet, size: 40 mm, state: closed}]",
                    "behind", "none | [loom, brake line]", "wet", "dry", "near ear", "false",
                    "near noise", "engine")),
            new UsualPanel("tunnel", CARS, List.of(700, 1200), List.of(280, 420), List.of(0), "bead", "console stud", keys(
                    "shape", "{curve: rolled, rise: 90 mm}", "clearance", "5 mm | 9 mm | 15 mm",
                    "clearance to", "carpet | trim", "heat", "{from: exhaust, peak: 92 degC} | {from: exhaust, peak: 112 degC}",
                    "openings", "none | [{kind: grommet, size: 60 mm, state: closed}] | [" + HOLE + "]",
                    "moving", "none | [gear linkage]", "covers", "none | [{kind: gearbox cover, size: [220 mm, 180 mm]}]",
                    "behind", "none | [brake line]", "wet", "dry", "traffic", "carpet | none", "near ear", "false",
                    "near noise", "gearbox | exhaust", "missing", "none | none | [heat shield]")),
            new UsualPanel("wheel arch", ANY_BODY, List.of(500, 800), List.of(350, 500), List.of(0), "bead", "", keys(
                    "shape", "{curve: crowned, rise: 40 mm} | {curve: rolled, rise: 60 mm}",
                    "clearance", "4 mm | 12 mm | 20 mm", "clearance to", "trim | lining", "heat", "none",
                    "openings", "none | [{kind: seam gap, size: 60 mm, state: open}]", "behind", "none | [filler neck]",
                    "wet", "dry | damp", "dries out", "true | false", "near ear", "false | true", "near noise", "tyres")),
            new UsualPanel("side", TALL, List.of(800, 1600), List.of(700, 1200), List.of(1, 1, 2), "box section",
                    "lining clip", keys(
                    "shape", "{curve: rolled, rise: 12 mm} | flat", "clearance", "18 mm | 30 mm | 45 mm",
                    "clearance to", "lining", "heat", "{from: sun, peak: 70 degC} | none", "openings",
                    "none | [" + DRAIN + "] | [{kind: gas vent, size: 80 mm, state: open}]",
                    "lining on ribs", "true | false", "behind", "none | none | [gas locker] | [loom]",
                    "wet", "dry | damp", "dries out", "true | false", "near ear", "true | false",
                    "near noise", "road | none")),
            new UsualPanel("boot floor", CARS, List.of(700, 1000), List.of(700, 950), List.of(0, 1), "bead", "", keys(
                    "shape", "flat | {curve: crowned, rise: 20 mm}", "clearance", "6 mm | 12 mm | 20 mm",
                    "clearance to", "carpet | floor board", "heat", "none | {from: exhaust, peak: 88 degC}",
                    "openings", "none | [" + DRAIN + "] | [{kind: pressure relief flap, size: 120 mm, state: open}]",
                    "covers", "none | [{kind: spare wheel cover}]", "behind", "none | [fuel tank]", "wet", "dry | damp",
                    "dries out", "true | false", "traffic", "carpet | dragged loads", "near ear", "false",
                    "near noise", "exhaust | tyres")),
            new UsualPanel("tailgate", CARS, List.of(800, 1100), List.of(400, 600), List.of(0, 1), "top hat", "", keys(
                    "shape", "{curve: crowned, rise: 12 mm}", "clearance", "20 mm | 30 mm", "clearance to", "trim",
                    "heat", "{from: sun, peak: 65 degC}", "openings", "[" + DRAIN + "] | none",
                    "behind", "none | [loom]", "wet", "damp | dry", "dries out", "true", "near ear", "false",
                    "near noise", "none", "lid", "{holder: struts, margin: 0.3 kg} | {holder: struts, margin: 3 kg}")));

    /** Keys and their values in turn; a stroke parts the values. */
    private static Map<String, List<String>> keys(String... keysAndValues) {
        Map<String, List<String>> keys = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            keys.put(keysAndValues[i], List.of(keysAndValues[i + 1].split(" \\| ")));
        }
        return keys;
    }
}
