package unthrum.drill;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import unthrum.Scenarios;
import unthrum.survey.Survey;
import unthrum.survey.SurveyReader;

/** A floor of two bays over the road, of which only the first rings, with an empty grommet hole and a drain. */
final class Floors {

    static final Practice PRACTICE = new Practice(Scenarios.KNOWLEDGE, Scenarios.CATALOGUE);

    private static final String RINGING = """
            survey: A floor to judge
            vehicle: {body: saloon, drive: petrol, use: daily, year: 2012, payload left: 400 kg, coldest: -5 degC}
            aims: [road drumming]
            panels:
              - panel: floor
                zone: floor
                size: [900 mm, 600 mm]
                ribs: [{kind: bead, runs: across, at: 450 mm, width: 40 mm}]
                tap: [rings, dead]
                skin: {metal: steel, gauge: 0.8 mm}
                shape: flat
                clearance: 20 mm
                clearance to: carpet
                heat: none
                reach: open
                openings:
                  - {kind: empty grommet hole, size: 28 mm, count: 1, must stay open: false, state: open}
                  - {kind: drain, size: 8 mm, count: 1, state: open}
                fixings: [{kind: seat bolt, at: [60 mm, 100 mm], size: 40 mm, count: 1}]
                behind: none
                wet: dry
                surface: {paint: sound, dirt: dust, rust: none, old: none}
                traffic: carpet
                near ear: false
                near noise: road
            """;

    private Floors() {
    }

    static Exercise ringing() {
        return of(RINGING);
    }

    static Exercise rusty() {
        return of(RINGING.replace("rust: none", "rust: live"));
    }

    static Exercise dead() {
        return of(RINGING.replace("[rings, dead]", "[dead, dead]").replace("near noise: road", "near noise: none")
                .replace("state: open", "state: closed"));
    }

    static Exercise untapped() {
        return of(RINGING.replace("[rings, dead]", "not tapped").replace("near noise: road", "near noise: none")
                .replace("state: open", "state: closed"));
    }

    private static Exercise of(String text) {
        Survey survey = SurveyReader.read("floor",
                new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        return PRACTICE.exercises(survey, survey.panels(), 1).get(0);
    }
}
