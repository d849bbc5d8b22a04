package unthrum.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import unthrum.compare.EffectChange.Key;
import unthrum.compare.EffectChange.Kind;
import unthrum.effect.AimGain;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.Gain;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.BayEffect;
import unthrum.effect.Range;
import unthrum.effect.Blocking;
import unthrum.effect.HeatEffect;
import unthrum.effect.PanelEffect;
import unthrum.physics.Estimate;
import unthrum.physics.ThirdOctave;
import unthrum.reading.Dimension;
import unthrum.survey.Aim;

/** Effects laid out as single numbers, those of what is fitted, so that two sides can be held against each other. */
final class EffectNumbers {
    private final Map<Key, Double> numbers = new LinkedHashMap<>();

    private EffectNumbers() {
    }

    /** The numbers of one panel. */
    static Map<Key, Double> of(PanelEffect panel) {
        EffectNumbers all = new EffectNumbers();
        for (BayEffect bay : panel.bays()) {
            all.add(Kind.QUIETER_BAY, bay.place().part(), bay.response().map(r -> r.room().quieter().about()));
        }
        for (Blocking blocking : panel.blocking()) {
            all.add(Kind.HELD_BACK, band(blocking.band()), blocking.losses().map(Blocking.Losses::treated));
        }
        all.add(Kind.HEAT_IN, "", panel.heat().summer().map(HeatEffect.Flow::treated));
        all.add(Kind.HEAT_LOST, "", panel.heat().winter().map(HeatEffect.Flow::treated));
        all.add(Kind.CAN_GET_WET, "", panel.heat().dew().map(d -> d.treated().share()));
        return all.numbers;
    }

    /** The numbers of one aim; none where the client does not have it. */
    static Map<Key, Double> of(Aim aim, Iterable<AimGain> gains) {
        EffectNumbers all = new EffectNumbers();
        for (AimGain gain : gains) {
            if (gain.aim() == aim) {
                all.add(Kind.TAKEN, "", gain.taken().map(Range::about));
                gain.gains().forEach(all::gain);
            }
        }
        return all.numbers;
    }

    private void gain(Gain gain) {
        if (gain instanceof LessHeat heat) {
            put(Kind.HEAT_THROUGH, "", heat.wattsAfter());
        } else if (gain instanceof DrierFaces faces) {
            put(Kind.WET_AREA, "", faces.wetAfter());
        }
    }

    private static String band(ThirdOctave band) {
        return Dimension.FREQUENCY.show(band.nominal());
    }

    private void add(Kind kind, String at, Estimate<Double> number) {
        Optional.of(number).filter(Estimate::isWithin).ifPresent(n -> put(kind, at, n.value()));
    }

    private void put(Kind kind, String at, double number) {
        numbers.put(new Key(kind, at), number);
    }
}
