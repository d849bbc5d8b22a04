package unthrum.report;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import unthrum.facts.AimedAt;
import unthrum.facts.Conclusion;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.facts.Threshold;
import unthrum.knowledge.Pattern;
import unthrum.reading.Dimension;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Components;
import unthrum.reasoning.engine.Reason;
import unthrum.report.Template.Slot;

/**
 * Fills a rule's templates from the facts, thresholds and conclusions that its variables stood for. Facts and
 * conclusions print as their place, numbers with their units, enums as their words; what was assumed is marked. A
 * template that names something unknown is a defect of the rule base.
 */
public final class Sentences {

    static final String OUT_OF_RANGE = "outside the formula's range";
    private static final String ASSUMED = " (assumed)";

    private final PlaceNames names;

    public Sentences(PlaceNames names) {
        this.names = names;
    }

    /** The reason as a clause, without capital or full stop. */
    public String because(Reason reason) {
        return fill(reason.rule().because(), reason);
    }

    /** What to do as a clause; the rule must have an advice. */
    public String advice(Reason reason) {
        return fill(reason.rule().advice().orElseThrow(() -> new IllegalStateException(
                "the rule '" + reason.rule().id() + "' draws a conclusion that needs an advice and has none")), reason);
    }

    public String place(Place place) {
        return names.of(place);
    }

    /** The places that the reason's sentence names, in its order. */
    List<String> placesIn(Reason reason) {
        return slots(reason).filter(s -> s.component().isEmpty()).filter(s -> isPlace(bound(s, reason)))
                .map(s -> value(s, reason)).toList();
    }

    /** The numbers and words that the reason's sentence tells of its facts, in its order. */
    List<String> valuesIn(Reason reason) {
        return slots(reason).filter(s -> !s.component().isEmpty())
                .map(s -> value(s, reason)).toList();
    }

    private static java.util.stream.Stream<Slot> slots(Reason reason) {
        return Template.of(reason.rule().because()).parts().stream().filter(Slot.class::isInstance)
                .map(Slot.class::cast);
    }

    private String fill(String template, Reason reason) {
        StringBuilder said = new StringBuilder();
        Set<Slot> marked = new HashSet<>();
        for (Template.Part part : Template.of(template).parts()) {
            if (part instanceof Slot slot) {
                English.append(said, value(slot, reason));
                said.append(isAssumed(slot, reason) && marked.add(slot) ? ASSUMED : "");
            } else {
                said.append(((Template.Text) part).words());
            }
        }
        return pronoun(said.toString());
    }

    /** A sentence about the panel need not name it twice. */
    private static String pronoun(String said) {
        return said.startsWith(PlaceNames.PANEL + " ")
                ? said.replace(", and " + PlaceNames.PANEL + " ", ", and it ") : said;
    }

    private static boolean isAssumed(Slot slot, Reason reason) {
        return reason.rule().pattern() != Pattern.A_MEASUREMENT_DECIDES
                && bound(slot, reason) instanceof Fact fact && fact.assumed().contains(slot.component());
    }

    private String value(Slot slot, Reason reason) {
        Object bound = bound(slot, reason);
        return slot.component().isEmpty() ? whole(bound, slot, reason) : component(bound, slot, reason);
    }

    private String whole(Object bound, Slot slot, Reason reason) {
        if (bound instanceof Threshold threshold) {
            return threshold.toString();
        }
        if (bound instanceof Fact fact) {
            return names.of(fact.place());
        }
        if (bound instanceof Conclusion conclusion) {
            return names.of(conclusion.place());
        }
        throw unknown(slot, reason);
    }

    private String component(Object bound, Slot slot, Reason reason) {
        if (slot.component().equals("panel") && bound instanceof Fact fact) {
            return names.of(Place.of(fact.panel()));
        }
        if (!Components.has(bound, slot.component())) {
            throw unknown(slot, reason);
        }
        if (bound instanceof AimedAt aim && slot.component().equals("rank")) {
            return English.ordinal(aim.rank());
        }
        return shown(bound, slot.component());
    }

    /** A component's value as a reader sees it. */
    static String shown(Object owner, String component) {
        if (owner instanceof Threshold threshold) {
            return threshold.toString();
        }
        Object value = Components.value(owner, component);
        if (value instanceof Double number) {
            Dimension dimension = Components.dimension(owner.getClass(), component).orElse(Dimension.NUMBER);
            return number.isNaN() ? OUT_OF_RANGE : Amounts.quantity(number, dimension);
        }
        if (value instanceof Enum<?> word) {
            return Words.of(word);
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value instanceof Quantity quantity ? quantity.toString() : String.valueOf(value);
    }

    private static Object bound(Slot slot, Reason reason) {
        Object bound = reason.bindings().get(slot.variable());
        if (bound == null) {
            throw unknown(slot, reason);
        }
        return bound;
    }

    private static boolean isPlace(Object bound) {
        return bound instanceof Fact || bound instanceof Conclusion;
    }

    private static IllegalStateException unknown(Slot slot, Reason reason) {
        return new IllegalStateException("the rule '" + reason.rule().id() + "' speaks of " + slot
                + ", which it does not bind");
    }
}
