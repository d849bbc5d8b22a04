package unthrum.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import unthrum.material.Layer;
import unthrum.reading.Words;
import unthrum.effect.Layup;
import unthrum.reasoning.change.Effect;
import unthrum.reasoning.change.Spot;

/** What a change does to a panel, in words. */
final class EffectWords {

    private final Sentences sentences;

    EffectWords(Sentences sentences) {
        this.sentences = sentences;
    }

    /**
     * 'butyl-2 goes on bays 1 and 2, insulation falls away and the verdict is patch'.
     *
     * @param layup what is laid then
     */
    String of(List<Effect> effects, Layup layup) {
        Map<Layer, List<Spot>> gained = new EnumMap<>(Layer.class);
        Map<Layer, List<Spot>> lost = new EnumMap<>(Layer.class);
        List<String> said = new ArrayList<>();
        for (Effect effect : effects) {
            if (effect instanceof Effect.Gains gains) {
                gained.computeIfAbsent(gains.spot().layer(), l -> new ArrayList<>()).add(gains.spot());
            } else if (effect instanceof Effect.Loses loses) {
                lost.computeIfAbsent(loses.spot().layer(), l -> new ArrayList<>()).add(loses.spot());
            }
        }
        gained.forEach((layer, spots) -> said.add(gain(layer, spots, layup)));
        if (!lost.isEmpty()) {
            said.add(losses(lost));
        }
        effects.stream().filter(Effect.Becomes.class::isInstance).map(Effect.Becomes.class::cast)
                .forEach(b -> said.add("the verdict is " + Words.of(b.verdict())));
        return English.and(said);
    }

    private String gain(Layer layer, List<Spot> spots, Layup layup) {
        if (layer == Layer.SEAL) {
            return "closing " + places(spots) + " is worth while";
        }
        String material = layup.of(layer).map(l -> l.material().material() + " goes on as " + English.withArticle(layer.word()))
                .orElse(English.withArticle(layer.word()) + " goes on");
        return material + where(spots);
    }

    /** 'the damping on bays 1 and 2 and the barrier fall away'. */
    private String losses(Map<Layer, List<Spot>> lost) {
        List<String> names = new ArrayList<>();
        lost.forEach((layer, spots) -> names.add(layer == Layer.SEAL ? "the closing of " + places(spots)
                : "the " + layer.word() + where(spots)));
        return English.and(names) + (names.size() == 1 ? " falls away" : " fall away");
    }

    private String where(List<Spot> spots) {
        return spots.stream().allMatch(s -> s.place().isWholePanel()) ? "" : " on " + places(spots);
    }

    private String places(List<Spot> spots) {
        return English.andNumbered(spots.stream().map(s -> sentences.place(s.place())).toList());
    }
}
