package unthrum.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.Scenarios;
import unthrum.audit.SoundJob;
import unthrum.built.Built;
import unthrum.built.Edit;
import unthrum.plan.Plan;
import unthrum.report.HandoverSheet.Topic;

@DisplayName("The sheet for the owner")
class HandoverWordsTest {

    private static final Plan VAN = Scenarios.plan("sleeper-city-van");
    private static final Plan HATCHBACK = Scenarios.plan("one-pack-hatchback");

    private static List<String> lines(Plan plan, Built built, Topic topic) {
        return HandoverSheet.of(Scenarios.AUDITOR.audit(plan, built)).sections().stream()
                .filter(s -> s.topic() == topic).flatMap(s -> s.lines().stream()).toList();
    }

    /** The job done as planned, but for what is written down of one panel's layers. */
    private static Built with(Plan plan, String panel, Object layers) {
        Built sound = SoundJob.of(plan);
        return Edit.with(sound, "panels", sound.panels().stream()
                .map(p -> p.panel().equals(panel) ? Edit.with(p, "layers", layers) : p).toList());
    }

    @Test
    @DisplayName("warns of the orange cables of an electric vehicle, wherever they run")
    void highVoltage() {
        assertThat(lines(VAN, SoundJob.of(VAN), Topic.CARE)).anyMatch(l -> l.startsWith("Orange cables"));
        assertThat(lines(HATCHBACK, SoundJob.of(HATCHBACK), Topic.CARE)).noneMatch(l -> l.contains("Orange cables"));
    }

    @Test
    @DisplayName("does not take what nobody wrote down for nothing")
    void unknownLayers() {
        Built silent = with(HATCHBACK, "boot-floor", Optional.empty());
        assertThat(lines(HATCHBACK, silent, Topic.SERVICE)).anyMatch(l -> l.startsWith("Spare wheel cover on boot-floor")
                && l.contains("nobody has written down"));
        assertThat(lines(HATCHBACK, silent, Topic.LEFT))
                .contains("Nobody has written down what lies on boot-floor, or that nothing does.")
                .noneMatch(l -> l.startsWith("Boot-floor"));
    }

    @Test
    @DisplayName("says of a panel that was left out of the plan's work what was planned there")
    void leftUndone() {
        Built bare = with(HATCHBACK, "floor-rear", Optional.of(List.of()));
        assertThat(lines(HATCHBACK, bare, Topic.LEFT)).anyMatch(l -> l.startsWith("Floor-rear: ")
                && l.endsWith("was planned there, and is not there."));
    }
}
