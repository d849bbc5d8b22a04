package unthrum.report;

import java.util.List;
import java.util.stream.Collectors;
import unthrum.knowledge.RuleCard;
import unthrum.reading.Words;
import unthrum.reasoning.Case;
import unthrum.reasoning.Overruled;

/** The fitter's judgement calls on one panel: what is set aside, by whom and why, and what the rule says against it. */
final class OverruleText {

    private final Sentences sentences;

    OverruleText(Sentences sentences) {
        this.sentences = sentences;
    }

    List<String> lines(Case panel) {
        return panel.overruled().stream().map(o -> line(o) + " [" + o.entry().rule() + "]").toList();
    }

    private String line(Overruled o) {
        String by = o.entry().who() + " on " + o.entry().when();
        String why = o.entry().why().map(w -> ": " + w).orElse("");
        return switch (o.effect()) {
            case COUNTS -> English.sentence("set aside by " + by + why) + " " + speaks(o);
            case NO_REASON -> "Not set aside, since " + by + " gave no reason. " + speaks(o);
            case TOO_STRONG -> English.sentence("not set aside, though " + by + " wished it" + why)
                    + " No judgement sets aside what stands on "
                    + o.rule().map(r -> Words.of(r.standing())).orElseThrow()
                    + ". " + speaks(o);
            case POINTLESS -> English.sentence("the rule that " + by + " set aside does not speak here" + why)
                    + " Strike it, or look whether the facts are still right.";
        };
    }

    /** What is overruled, and the rule's own argument with the panel's numbers. */
    private String speaks(Overruled o) {
        String argument = Told.of(o.against().stream(), sentences).stream().map(Told::clause)
                .collect(Collectors.joining("; "));
        return "The rule: " + English.sentence(o.rule().map(RuleCard::name).orElseThrow())
                + " Against setting it aside: " + English.sentence(argument);
    }
}
