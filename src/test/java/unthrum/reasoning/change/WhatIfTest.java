package unthrum.reasoning.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import unthrum.reading.Problems;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

@DisplayName("A panel as it might be")
class WhatIfTest {

    private static final Survey SURVEY = Vehicles.survey(Path.of("scenarios/travelling-bicycle-workshop.yaml"));
    private static final PanelTrial TRIAL = Vehicles.trial(SURVEY);

    @AfterAll
    static void close() {
        TRIAL.close();
    }

    private static PanelEntry panel(String name) {
        return SURVEY.panels().stream().filter(p -> p.panel().equals(name)).findFirst().orElseThrow();
    }

    private static WhatIf whatIf(String... edits) {
        return WhatIf.of(TRIAL, panel("cab-roof"), "--if", List.of(edits));
    }

    @Test
    @DisplayName("differs from today by what the edit does and nothing else")
    void differs() {
        WhatIf less = whatIf("clearance=0.2 in");
        assertThat(less.turns()).hasSize(1);
        assertThat(less.effects()).isNotEmpty();
        assertThat(less.gone()).isNotEmpty().noneMatch(j -> less.come().stream()
                .anyMatch(c -> c.conclusion().equals(j.conclusion())));
    }

    @Test
    @DisplayName("is today's panel when the edit says what holds today")
    void same() {
        WhatIf same = whatIf("clearance=12 mm", "reach=open");
        assertThat(same.effects()).isEmpty();
        assertThat(same.gone()).isEmpty();
        assertThat(same.come()).isEmpty();
        assertThat(same.isOtherLayup()).isFalse();
    }

    @Test
    @DisplayName("takes lists by the kinds in them")
    void lists() {
        assertThat(whatIf("behind=fuel line, loom").come()).isNotEmpty();
        assertThat(SURVEY.panels()).anySatisfy(panel -> assertThat(WhatIf.of(TRIAL, panel, "--if",
                List.of("openings=empty grommet hole")).effects()).contains(new Effect.Gains(new Spot(
                        unthrum.material.Layer.SEAL, new unthrum.facts.Place(panel.panel(), "empty grommet hole 1")))));
    }

    @Test
    @DisplayName("reads a unit as it is printed")
    void degreeSign() {
        assertThat(whatIf("peak=70 °C").turns()).singleElement().extracting(turn -> turn.to())
                .isEqualTo(whatIf("peak=70 degC").turns().get(0).to());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "clearance=9       | --if 'clearance=9': '9' without a unit; expected a length in mm, cm, m, in or ft, from 0 mm to 500 mm; did you mean '9 mm'?",
        "clearance=0,9 mm  | --if 'clearance=0,9 mm': '0,9 mm' has a comma; expected a length in mm, cm, m, in or ft, from 0 mm to 500 mm; write '0.9 mm'",
        "peak=90 C         | '90 C' with the unknown unit 'C'; expected a temperature in degC or degF, from -20 degC to 900 degC; did you mean '90 degC'?",
        "behind=wiring     | 'wiring'; expected one of loom",
        "behind=wiring     | write 'loom'",
        "moving=latch      | write 'door latch'",
        "clearence=9 mm    | did you mean 'clearance'?",
        "reach=opne        | did you mean 'open'?",
        "reach             | no '='",
        "peak=2 kg         | 'peak=2 kg': '2 kg' is a mass",
        "behind=fuel lines | did you mean 'fuel line'?"})
    @DisplayName("refuses an edit that the survey would refuse, in the same words")
    void refused(String edit, String says) {
        assertThatThrownBy(() -> whatIf(edit)).isInstanceOf(Problems.class).hasMessageContaining(says);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "cab-roof        | clearance=0.3 mm            | a clearance of 0.3 mm; expected more than the skin's gauge of",
        "cab-roof        | shape=crowned; rise=900 mm  | a rise of 900 mm; expected no more than half the shorter side",
        "floor-rear-left | rib width=400 mm           | a bead at 560 mm on the bead at 280 mm; expected ribs that lie apart",
        "cab-roof        | shape=flat; rise=20 mm      | no fact 'rise' on this panel"})
    @DisplayName("refuses edits that cannot be true together, as the survey would")
    void contradicting(String panel, String edits, String says) {
        assertThatThrownBy(() -> WhatIf.of(TRIAL, panel(panel), "--if", List.of(edits.split("; "))))
                .isInstanceOf(Problems.class).hasMessageContaining(says);
    }

    @Test
    @DisplayName("takes away what was said of a fact as it was: the peak of a heat that is gone")
    void settled() {
        WhatIf cool = whatIf("heat from=none");
        assertThat(panel("cab-roof").heat().orElseThrow().peak()).isPresent();
        assertThat(cool.changed().panel().facts().the(unthrum.facts.Heat.class).peak())
                .isEqualTo(Vehicles.KNOWLEDGE.number("usual/closed-vehicle"));
    }

    @Test
    @DisplayName("reads each edit on what those before it made: a panel may be given a shape and then its rise")
    void inTurn() {
        PanelEntry flat = SURVEY.panels().stream().filter(p -> p.shape().filter(
                s -> s.curve() == unthrum.survey.Curve.FLAT).isPresent()).findFirst().orElseThrow();
        WhatIf crowned = WhatIf.of(TRIAL, flat, "--if", List.of("shape=crowned", "rise=8 mm"));
        assertThat(crowned.changed().panel().facts().the(unthrum.facts.Panel.class).rise()).isEqualTo(0.008);
    }

    @Test
    @DisplayName("reports all that is wrong with all edits at once")
    void all() {
        assertThatThrownBy(() -> whatIf("clearance=9", "wet=soaked")).isInstanceOf(Problems.class)
                .satisfies(e -> assertThat(((Problems) e).all()).hasSize(2));
    }
}
