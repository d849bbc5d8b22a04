package unthrum.knowledge;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.kie.api.definition.rule.Rule;
import unthrum.material.Layer;
import unthrum.reading.Words;

/**
 * All that a rule says of itself.
 *
 * @param id      subject/short-name, never reused
 * @param name    the rule in one plain sentence
 * @param advice  what to do, for rules that ask for work, attention or waiting
 * @param because the reason, a template over the rule's bound facts
 * @param teaches why it is so, for an apprentice
 * @param layer   the layer with which alone its work comes
 * @param serves  the layers of which one must be wanted for the rule to speak, where it does not care which
 */
public record RuleCard(String id, String name, Pattern pattern, Standing standing, Optional<Weight> weight,
                       String source, Optional<String> advice, String because, String teaches,
                       Optional<Layer> layer, Optional<Set<Layer>> serves) {

    /** The card of a compiled rule; a missing or unknown mark is an error that names the rule. */
    static RuleCard of(Rule rule) {
        Map<String, Object> marks = rule.getMetaData();
        return new RuleCard(
                required(rule, "id"), rule.getName(),
                word(Pattern.class, rule, "pattern"), word(Standing.class, rule, "standing"),
                marks.containsKey("weight") ? Optional.of(word(Weight.class, rule, "weight")) : Optional.empty(),
                required(rule, "source"), Optional.ofNullable((String) marks.get("advice")),
                required(rule, "because"), required(rule, "teaches"),
                marks.containsKey("layer") ? Optional.of(word(Layer.class, rule, "layer")) : Optional.empty(),
                Serving.of(rule));
    }

    /** The part of the id before the stroke: the file that holds the rule. */
    public String subject() {
        return id.substring(0, id.indexOf('/'));
    }

    /** Whether it still matters where only these layers are laid. */
    public boolean serves(Predicate<Layer> laid) {
        return serves.map(layers -> layers.stream().anyMatch(laid)).orElse(true);
    }

    private static String required(Rule rule, String mark) {
        Object value = rule.getMetaData().get(mark);
        if (value == null) {
            throw new IllegalStateException("rule \"" + rule.getName() + "\" has no @" + mark);
        }
        return value.toString();
    }

    private static <E extends Enum<E>> E word(Class<E> type, Rule rule, String mark) {
        String word = required(rule, mark);
        for (E constant : type.getEnumConstants()) {
            if (Words.of(constant).equals(word)) {
                return constant;
            }
        }
        throw new IllegalStateException("rule \"" + rule.getName() + "\": @" + mark + " knows no '" + word + "'");
    }
}
