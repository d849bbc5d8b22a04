package unthrum.survey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A word of the trade that is not the survey's own")
class NearWordsTest {
    private static final String DOOR = SurveyReaderTest.DOOR;

    @Test
    @DisplayName("is told with its place, the words that may stand there and the one to write")
    void whole() {
        assertThat(SurveyReaderTest.problems(DOOR.replace("zone: door", "zone: firewall"))).isEqualTo("van.yaml:6:11: 'firewall'; expected"
                + " one of roof, bulkhead, tunnel, floor, footwell, wheel arch, side, pillar, door, sliding door, rear door,"
                + " tailgate, bonnet, boot floor, boot lid, sill or cab back; write 'bulkhead'");
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("is told with the words that it may mean in that place, all of them where it may be several")
    @CsvSource(delimiter = '|', value = {
        "fixings: {kind: seat}|write 'seat bolt' or 'child-seat anchor'",
        "moving: seat|write 'seat travel'",
        "moving: latch|write 'door latch'",
        "moving: [Seat]|write 'seat travel'",
        "fixings: door latch|did you mean 'latch'?",
        "fixings: striker|write 'latch'",
        "fixings: anchor|did you mean 'belt anchor' or 'child-seat anchor'?",
        "clearance to: mat|write 'moulded mat'",
        "clearance to: carpet pad|did you mean 'carpet'?",
        "traffic: moulded mat|did you mean 'mat'?",
        "surface: {old: undercoating}|write 'underseal'",
        "surface: {old: pads}|write 'sound pads', 'loose pads' or 'unknown pads'",
        "surface: {dirt: oil}|write 'grease'",
        "behind: wiring|write 'loom'",
        "behind: cable|write 'loom' or 'orange cable'",
        "behind: gas tank|write 'fuel tank' or 'gas locker'",
        "openings: weep hole|write 'drain'",
        "openings: [drain-hole]|write 'drain'",
        "skin: aluminum|write 'aluminium'",
        "tap: thud|write 'dull' or 'dead'",
        "holes: none|write 'openings'",
        "location: side|write 'zone'",
        "skin: {metal: steel, thickness: 1 mm}|write 'gauge'",
        "heat: {from: muffler}|write 'exhaust'",
        "clearance to: Trim|did you mean 'trim'?",
        "clearance to: sky|",
    })
    void onPanel(String key, String remedy) {
        String end = SurveyReaderTest.problems(DOOR + "    " + key + "\n").lines().findFirst().orElseThrow().replaceAll("^.*?; expected [^;]*"
                + "(; or the keys [^;]*)?", "").replaceAll("^; ", "");
        assertThat(end).isEqualTo(remedy == null ? "" : remedy);
    }

    @ParameterizedTest(name = "{0}")
    @DisplayName("is told for a place on the vehicle")
    @CsvSource(delimiter = '|', value = {
        "hood|write 'bonnet'",
        "trunk|write 'boot floor' or 'boot lid'",
        "tire well|write 'wheel arch'",
        "quarter panel|write 'side'",
        "rocker|write 'sill'",
        "headliner|write 'roof'",
        "toe board|write 'footwell' or 'bulkhead'",
    })
    void zones(String said, String remedy) {
        assertThat(SurveyReaderTest.problems(DOOR.replace("zone: door", "zone: " + said))).endsWith("; " + remedy);
    }

    @Test
    @DisplayName("stands in for the key that is meant, which is not missed besides")
    void keyNotMissed() {
        assertThat(SurveyReaderTest.problems(DOOR.replace("zone: door", "location: door"))).isEqualTo(
                "van.yaml:6:5: unknown key 'location'; expected a known key; write 'zone'");
    }
}
