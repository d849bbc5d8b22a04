package unthrum.effect;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import unthrum.derive.HeardSound;
import unthrum.derive.OpenArea;
import unthrum.derive.PanelFacts;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Setting;
import unthrum.knowledge.Knowledge;

/** What a panel gives off and lets through on each way, bare and under any layup; in units that only add up. */
final class PanelAmounts {

    private final Knowledge knowledge;
    private final PanelFacts facts;
    private final Panel panel;
    private final PanelSound sound;
    private final HeatGain heat;

    PanelAmounts(Knowledge knowledge, PanelFacts facts, PanelSound sound, HeatGain heat) {
        this.knowledge = knowledge;
        this.facts = facts;
        this.panel = facts.the(Panel.class);
        this.sound = sound;
        this.heat = heat;
    }

    PanelFacts facts() {
        return facts;
    }

    Panel panel() {
        return panel;
    }

    PanelSound sound() {
        return sound;
    }

    /** How much more a panel counts whose sound comes close to an ear. */
    double ear() {
        return facts.the(Setting.class).nearEar() ? Math.pow(10, knowledge.number("worth/near-ear") / 10) : 1;
    }

    double bare(Way.Kind kind, Optional<HeardSound> sound) {
        return of(kind, sound, Layup.NOTHING, Set.of(), Sureness.ABOUT);
    }

    /** @param closed the openings that are closed by then */
    double of(Way.Kind kind, Optional<HeardSound> sound, Layup layup, Set<Place> closed, Sureness how) {
        return switch (kind) {
            case SHAKEN -> sound.filter(s -> s.shakes(panel))
                    .map(s -> ear() * this.sound.shaken(s.shaking(), layup, how)).orElse(0.0);
            case AIRBORNE -> sound.map(s -> s.reaching(panel, facts.the(Setting.class))
                    * airborne(s.airborne(), layup, closed, how)).orElse(0.0);
            case HEAT_IN -> heat.summer(layup.withoutDamping()).orElse(0);
            case HEAT_OUT -> heat.winter(layup.withoutDamping()).orElse(0);
            case WETNESS -> how == Sureness.ABOUT ? heat.wet(layup.withoutDamping()).orElse(0)
                    : heat.told() ? panel.area() * heat.wet(Stack.of(panel, layup.withoutDamping()))
                            .map(w -> how == Sureness.LEAST ? w.hours().high() : w.hours().low()).orElse(0.0) : 0;
        };
    }

    /** Share by which a heat flow through the panel may be off either way. */
    double heatError(Way.Kind kind, Layup layup) {
        HeatGain.Flows flows = kind == Way.Kind.HEAT_OUT ? heat.winter() : heat.summer().orElse(null);
        List<Stack> strips = Stack.of(panel, layup.withoutDamping());
        return flows == null || flows.mean(strips).isEmpty() ? 0 : flows.error(strips);
    }

    /** What comes through the air, beside open holes. */
    private double airborne(double[] counts, Layup layup, Set<Place> closed, Sureness how) {
        double open = openShare(closed);
        return panel.area() * (open * Arrays.stream(counts).sum() + (1 - open) * sound.through(counts, layup, how));
    }

    double openShare(Set<Place> closed) {
        return OpenArea.share(facts.all(Opening.class).filter(o -> o.staysOpen() || !closed.contains(o.place())), panel,
                knowledge);
    }
}
