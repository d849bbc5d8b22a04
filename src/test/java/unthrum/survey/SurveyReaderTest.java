package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import unthrum.reading.Problems;

@DisplayName("A survey file")
class SurveyReaderTest {
    /** Panel 'door' begins in line 5; a key added to it stands in line 8. */
    static final String DOOR = """
            survey: Small job
            vehicle: {body: van, drive: petrol, use: daily}
            aims: [road drumming]
            panels:
              - panel: door
                zone: door
                size: [800 mm, 600 mm]
            """;

    private static Survey read(String yaml) {
        return SurveyReader.read("van.yaml", new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
    }

    static String problems(String yaml) {
        Problems thrown = catchThrowableOfType(Problems.class, () -> read(yaml));
        return thrown == null ? "no problem" : thrown.getMessage();
    }

    private static void door(String key, String problem) {
        assertThat(problems(DOOR + "    " + key + "\n")).isEqualTo(problem);
    }

    private static void fine(String key) {
        assertThat(problems(DOOR + "    " + key + "\n")).isEqualTo("no problem");
    }

    @Test
    @DisplayName("is read whole: words, units, lists, what is unknown")
    void whole() throws IOException {
        try (InputStream in = SurveyReaderTest.class.getResourceAsStream("workshop.yaml")) {
            Survey survey = SurveyReader.read("workshop.yaml", in);
            assertThat(survey.panels()).extracting(PanelEntry::panel).containsExactly("roof-middle", "bulkhead", "bonnet");
            assertThat(survey.aims()).containsExactly(Aim.ROAD_DRUMMING, Aim.ENGINE_NOISE, Aim.SUMMER_HEAT);
            PanelEntry roof = survey.panels().get(0);
            assertThat(roof.heat().orElseThrow().peak().orElseThrow().toString()).isEqualTo("85 °C");
            assertThat(roof.moving()).contains(List.of());
            assertThat(roof.tap()).contains(List.of(Tap.RINGS, Tap.DULL));
            PanelEntry bulkhead = survey.panels().get(1);
            assertThat(bulkhead.skin()).contains(new PanelEntry.Skin(Metal.STEEL, Optional.empty()));
            assertThat(bulkhead.size().get(0).toString()).isEqualTo("1524 mm");
            assertThat(bulkhead.clearance()).isEmpty();
            assertThat(bulkhead.ribs()).isEmpty();
        }
    }

    @Test
    @DisplayName("with decimal commas gets one message for each, in brackets and braces too")
    void decimalCommas() {
        String size = "; expected a length in mm, cm, m, in or ft, from 30 mm to 12 m; write ";
        assertThat(problems(DOOR.replace("[800 mm, 600 mm]", "[1,2 m, 0,9 m]"))).isEqualTo(
                "van.yaml:7:12: '1,2 m' has a comma" + size + "'1.2 m'\nvan.yaml:7:19: '0,9 m' has a comma" + size + "'0.9 m'");
        door("skin: {metal: steel, gauge: 0,7 mm}", "van.yaml:8:33: '0,7 mm' has a comma;"
                + " expected a length in mm, cm, m, in or ft, from 0.3 mm to 6 mm; write '0.7 mm'");
        door("decay: [{bay: 1, loss factor: 0,02}]", "van.yaml:8:35: '0,02' has a comma;"
                + " expected a plain number, from 0.0001 to 1; write '0.02'");
        assertThat(problems(DOOR + "    openings: [{kind: vent, at: [0,2 m, 0,09 m], size: 1,5 cm}]\n"
                + "    note: a, b\n").lines()).hasSize(3).allMatch(l -> l.contains(" has a comma; expected a length in mm"));
    }

    @Test
    @DisplayName("with a block whose whole number is wrong gets that one message")
    void wrongWholeNumber() {
        door("decay: [{bay: many, loss factor: 0.02}]", "van.yaml:8:19: 'many'; expected a whole number from 1 to 1000");
    }

    @Test
    @DisplayName("with one text where a list is wanted is told so, and what to write")
    void textForList() {
        assertThat(problems(DOOR.replace("[800 mm, 600 mm]", "800 x 600 mm"))).isEqualTo("van.yaml:7:11: '800 x 600 mm' in"
                + " place of a list; expected a list of 2, each a length in mm, cm, m, in or ft, from 30 mm to 12 m;"
                + " write '[800 mm, 600 mm]'");
        assertThat(problems(DOOR.replace("[road drumming]", "road drumming, rattles"))).endsWith(
                ", or a list of such; write '[road drumming, rattles]'");
        door("ribs: top hat", "van.yaml:8:11: 'top hat' in place of a list; expected a list, each entry with the keys kind,"
                + " runs, at, width, height, section or stops short; write '[{kind: …, runs: …, at: …}]'");
        door("openings: drain, vent", "van.yaml:8:15: 'drain, vent' in place of a list; expected one of drain, breather,"
                + " vent, pressure relief flap, gas vent, cable hole, empty grommet hole, grommet, tooling hole, seam gap,"
                + " service opening or pedal box hole; or the keys kind, size, count, state, must stay open or at, or a list"
                + " of such; write '[drain, vent]'");
        fine("tap: rings");
        fine("openings: drain");
        assertThat(problems(DOOR.substring(0, DOOR.indexOf("panels:")) + "panels: door\n")).startsWith(
                "van.yaml:4:9: 'door' in place of a list; expected a list").endsWith(
                "; write '[{panel: …, zone: …, size: …}]'");
    }

    @Nested
    @DisplayName("cannot hold, on one panel,")
    class OnePanel {
        @Test
        @DisplayName("a rib outside it; one that would fit the other way round gets that hint")
        void ribOutside() {
            door("ribs: {kind: bead, runs: across, at: 850 mm}", "van.yaml:8:42: a bead from 850 mm to 850 mm;"
                    + " expected a rib within the 800 mm of the side that it divides");
            door("ribs: {kind: bead, runs: along, at: 590 mm, width: 40 mm}", "van.yaml:8:41: a bead from 570 mm to"
                    + " 610 mm; expected a rib within the 600 mm of the side that it divides;"
                    + " did you mean 'runs: across'?");
            door("ribs: {kind: bead, runs: across, at: 10 mm, width: 40 mm}", "van.yaml:8:42: a bead from -10 mm to"
                    + " 30 mm; expected a rib within the 800 mm of the side that it divides");
            fine("ribs: {kind: fold, runs: across, at: 780 mm, width: 40 mm}");
        }

        @Test
        @DisplayName("ribs on one another, though ribs may cross")
        void ribsOverlap() {
            door("ribs: [{kind: bead, runs: across, at: 300 mm, width: 60 mm},"
                    + " {kind: top hat, runs: across, at: 350 mm, width: 60 mm}]", "van.yaml:8:100: a top hat at 350 mm"
                    + " on the bead at 300 mm (line 8); expected ribs that lie apart");
            door("ribs: [{kind: bead, runs: along, at: 300 mm}, {kind: bead, runs: along, at: 300 mm}]",
                    "van.yaml:8:81: a bead at 300 mm on the bead at 300 mm (line 8); expected ribs that lie apart");
            fine("ribs: [{kind: bead, runs: across, at: 300 mm, width: 60 mm},"
                    + " {kind: top hat, runs: along, at: 300 mm, width: 60 mm}]");
        }

        @Test
        @DisplayName("more taps than the ribs leave bays")
        void taps() {
            String ribs = "ribs: [{kind: bead, runs: across, at: 300 mm}, {kind: bead, runs: along, at: 300 mm}]";
            fine(ribs + "\n    tap: [rings, dull, dead, not tapped]");
            door(ribs + "\n    tap: [rings, dull, dead, dead, dead]", "van.yaml:9:10: 5 taps on 4 bays;"
                    + " expected one word for the panel, or one for each bay");
            door("ribs: none\n    tap: [rings, dull]", "van.yaml:9:10: 2 taps on one bay;"
                    + " expected one word for the panel, or one for each bay");
            fine("tap: [rings, dull]");
        }

        @Test
        @DisplayName("a clearance below the skin's gauge, though trim may touch the metal")
        void clearance() {
            door("skin: {metal: steel, gauge: 0.8 mm}\n    clearance: 0.5 mm", "van.yaml:9:16: a clearance of 0.5 mm;"
                    + " expected more than the skin's gauge of 0.8 mm; write '0 mm' where the metal is touched");
            fine("skin: {metal: steel, gauge: 0.8 mm}\n    clearance: 0 mm");
        }

        @Test
        @DisplayName("beside other mistakes of the panel, in one go")
        void inOneGo() {
            assertThat(problems(DOOR + "    clearence: 4 mm\n    wet: soaking\n    heat: {from: sun, peak: 80 C}\n"
                    + "    ribs: none\n    tap: [rings, rings]\n    fixings: [{kind: hinge, at: [1900 mm, 90 mm]}]\n").lines())
                    .hasSize(5).anyMatch(l -> l.contains("clearence")).anyMatch(l -> l.contains("soaking"))
                    .anyMatch(l -> l.contains("80 C")).anyMatch(l -> l.startsWith("van.yaml:12:"))
                    .anyMatch(l -> l.contains("a hinge at 1900 mm by 90 mm"));
        }

        @Test
        @DisplayName("a cover, an opening or a fixing larger than the panel, or a fixing beside it")
        void largerThanPanel() {
            door("covers: {kind: pump hatch, size: [700 mm, 650 mm]}", "van.yaml:8:38: a pump hatch of 700 mm by 650 mm;"
                    + " expected no more than the panel of 800 mm by 600 mm");
            fine("covers: {kind: pump hatch, size: [600 mm, 700 mm]}");
            door("covers: {kind: pump hatch, size: [200 mm, 100 mm], at: [90 mm, 300 mm]}", "van.yaml:8:60: a pump hatch of"
                    + " 200 mm by 100 mm with its middle at 90 mm by 300 mm; expected all of it on the panel of 800 mm by"
                    + " 600 mm; measure to the middle of the cover");
            fine("covers: {kind: pump hatch, size: [200 mm, 100 mm], at: [100 mm, 550 mm]}");
            door("openings: {kind: vent, size: 81 cm}", "van.yaml:8:34: a vent of 810 mm;"
                    + " expected no more than the panel's longer side, 800 mm");
            door("fixings: {kind: hinge, size: 81 cm}", "van.yaml:8:34: a hinge of 810 mm;"
                    + " expected no more than the panel's longer side, 800 mm");
            door("fixings: {kind: hinge, at: [300 mm, 601 mm]}", "van.yaml:8:32: a hinge at 300 mm by 601 mm;"
                    + " expected a place on the panel of 800 mm by 600 mm");
            fine("fixings: {kind: hinge, at: [800 mm, 0 mm]}");
        }

        @Test
        @DisplayName("a curve that no sheet has (circular segment: 0.8 m chord, 20 mm rise give 4.01 m)")
        void shape() {
            door("shape: {curve: crowned, rise: 301 mm}", "van.yaml:8:35: a rise of 301 mm;"
                    + " expected no more than half the shorter side, 300 mm");
            door("shape: {curve: flat, rise: 3 mm}", "van.yaml:8:12: a flat panel with a rise;"
                    + " expected no rise and no radius, or a crowned or rolled panel");
            door("shape: {curve: flat, radius: 3 m}", "van.yaml:8:12: a flat panel with a radius;"
                    + " expected no rise and no radius, or a crowned or rolled panel");
            door("shape: {curve: rolled, rise: 20 mm, radius: 20 m}", "van.yaml:8:49: a radius of 20000 mm with a rise of"
                    + " 20 mm; expected about 4010 mm along the first side or 2260 mm along the second;"
                    + " write the one that was measured");
            fine("shape: {curve: rolled, rise: 20 mm, radius: 4 m}");
            fine("shape: {curve: rolled, rise: 20 mm, radius: 2.3 m}");
        }

        @Test
        @DisplayName("a reachable share beside open or no reach, or something in the way of an open one")
        void reach() {
            door("reach: open\n    reachable: 40 %", "van.yaml:9:16: a reachable share with 'reach: open';"
                    + " expected a share only where the reach is part");
            door("reach: none\n    reachable: 40 %", "van.yaml:9:16: a reachable share with 'reach: none';"
                    + " expected a share only where the reach is part");
            door("reach: open\n    in the way: the tank", "van.yaml:9:17: something in the way of a panel with open"
                    + " reach; expected reach: part or none, or nothing in the way");
            fine("reach: part\n    reachable: 40 %\n    in the way: the tank");
        }

        @Test
        @DisplayName("heat from no source, or an exhaust on an electric vehicle")
        void heat() {
            door("heat: {from: none, peak: 61 degC}", "van.yaml:8:30: a peak of 61 °C from no source; expected the"
                    + " source of the heat, or no more than 60 °C; name what heats it, such as 'from: sun'");
            fine("heat: {from: none, peak: 60 degC}");
            assertThat(problems(DOOR.replace("petrol", "electric") + "    heat: exhaust\n")).isEqualTo("van.yaml:8:11:"
                    + " heat from 'exhaust' on an electric vehicle; expected another source, or another drive");
        }

        @Test
        @DisplayName("negative counts and sizes")
        void negative() {
            door("openings: {kind: vent, count: -1}", "van.yaml:8:35: '-1';"
                    + " expected a whole number from 1 to 500");
            door("clearance: -2 mm", "van.yaml:8:16: '-2 mm' is negative;"
                    + " expected a length in mm, cm, m, in or ft, from 0 mm to 500 mm");
        }
    }

    @Nested
    @DisplayName("cannot hold, on the whole vehicle,")
    class WholeVehicle {
        @Test
        @DisplayName("two panels of one name, be it in capitals")
        void names() {
            String other = "  - {panel: Door, zone: side, size: [1 m, 1 m]}\n";
            assertThat(problems(DOOR + other)).isEqualTo("van.yaml:8:13: the panel 'Door' again (first in line 5);"
                    + " expected a name of its own for each panel");
        }

        @Test
        @DisplayName("no panel at all")
        void noPanel() {
            String none = DOOR.substring(0, DOOR.indexOf("panels:")) + "panels: none\n";
            assertThat(problems(none)).startsWith("van.yaml:4:9: 0 entries in 'panels'; expected at least 1, each the keys");
        }

        @Test
        @DisplayName("an aim twice")
        void aims() {
            assertThat(problems(DOOR.replace("[road drumming]", "[rattles, road drumming, rattles]"))).isEqualTo(
                    "van.yaml:3:32: the aim 'rattles' again; expected each aim once, the weightiest first;"
                            + " delete one of the two");
        }

        @Test
        @DisplayName("stock with both sheets and a length, a size and a length, or neither")
        void stock() {
            String expected = " of 'foam'; expected sheets for whole sheets, a length for what is left of a roll, or"
                    + " the size of an offcut";
            String both = "stock: {material: foam, sheets: 2, length: 1 m}\n";
            assertThat(problems(both + DOOR)).isEqualTo("van.yaml:1:8: both sheets and a length" + expected);
            String sized = "stock: {material: foam, size: [1 m, 1 m], length: 1 m}\n";
            assertThat(problems(sized + DOOR)).isEqualTo("van.yaml:1:8: both a size and a length" + expected);
            assertThat(problems("stock: [{material: foam}]\n" + DOOR)).isEqualTo("van.yaml:1:9: neither sheets nor a"
                    + " length" + expected);
        }

        @Test
        @DisplayName("a hole or a hatch that lies off the panel, or several holes at one place")
        void places() {
            String at = "    openings: [{kind: drain, at: [900 mm, 10 mm]}, {kind: vent, count: 2, at: [9 mm, 9 mm]}]\n"
                    + "    covers: [{kind: pump hatch, at: [10 mm, 601 mm]}]\n";
            assertThat(problems(DOOR + at).lines().map(l -> l.replaceFirst("van.yaml:\\d+:\\d+: ", ""))).containsExactly(
                    "a drain at 900 mm by 10 mm; expected a place on the panel of 800 mm by 600 mm",
                    "2 holes at one place; expected one entry for each hole that has a place",
                    "a pump hatch at 10 mm by 601 mm; expected a place on the panel of 800 mm by 600 mm");
        }

        @Test
        @DisplayName("a roof that may take more than the whole vehicle")
        void limits() {
            assertThat(problems("limits: {added mass: 4 kg, roof mass: 5 kg}\n" + DOOR)).isEqualTo("van.yaml:1:39:"
                    + " a roof mass of 5 kg; expected no more than the added mass of 4 kg, which it is a part of");
        }

        @Test
        @DisplayName("a year that no vehicle was built in, or cylinders on an electric one")
        void vehicle() {
            assertThat(problems(DOOR.replace("use: daily", "use: daily, year: 20014"))).isEqualTo(
                    "van.yaml:2:55: '20014'; expected a whole number from 1900 to 2100");
            assertThat(problems(DOOR.replace("petrol, use: daily", "electric, use: daily, cylinders: 4"))).isEqualTo(
                    "van.yaml:2:62: cylinders on an electric vehicle; expected no such key, or another drive;"
                            + " delete the key");
        }
    }

    @Test
    @DisplayName("gets slips of form and impossible facts reported in one go, by place")
    void allAtOnce() {
        String yaml = DOOR.replace("body: van", "body: vann") + "    zoen: door\n"
                + "  - {panel: roof, zone: roof, size: [1 m, 1 m], reach: open, reachable: 10 %}\n"
                + "  - {panel: DOOR, zone: nowhere, size: [1 m, 1 m]}\n";
        assertThat(problems(yaml).lines().map(line -> line.substring(0, line.indexOf(';')))).containsExactly(
                "van.yaml:2:17: 'vann'", "van.yaml:8:5: unknown key 'zoen'",
                "van.yaml:9:73: a reachable share with 'reach: open'",
                "van.yaml:10:13: the panel 'DOOR' again (first in line 5)", "van.yaml:10:25: 'nowhere'");
    }

    @Test
    @DisplayName("may misspell the key of a whole block: nothing is checked against what that block holds")
    void misspeltBlock() {
        assertThat(problems(DOOR.replace("vehicle:", "vehicel:"))).isEqualTo(
                "van.yaml:2:1: unknown key 'vehicel'; expected a known key; did you mean 'vehicle'?");
    }

    @ParameterizedTest
    @DisplayName("may be broken in any of its parts: the others are checked all the same")
    @ValueSource(strings = {"survey: Small job", "vehicle: {body: van, drive: petrol, use: daily}",
        "aims: [road drumming]"})
    void partial(String lost) {
        String yaml = DOOR.replace(lost, "") + "    shape: {curve: flat, rise: 3 mm}\n";
        assertThat(problems(yaml)).contains(": no '" + lost.substring(0, lost.indexOf(':')) + "' in this file")
                .contains("a flat panel with a rise");
    }
}
