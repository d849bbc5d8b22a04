package unthrum.compare;

import java.util.List;
import unthrum.survey.Aim;

/** What an aim that the client has on both sides gains otherwise. */
public record AimChange(Aim aim, List<EffectChange> effects) {

    /** The aims of both sides in the order of the first, those that gain alike left away. */
    static List<AimChange> between(Side before, Side after) {
        return before.survey().aims().stream().filter(after.survey().aims()::contains)
                .map(aim -> new AimChange(aim, EffectChange.between(
                        EffectNumbers.of(aim, before.effects().vehicle().gains()),
                        EffectNumbers.of(aim, after.effects().vehicle().gains()))))
                .filter(c -> !c.effects().isEmpty()).toList();
    }
}
