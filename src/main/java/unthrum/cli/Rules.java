package unthrum.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.RuleCard;
import unthrum.reading.Nearest;
import unthrum.report.RulesText;

@Command(name = "rules", description = "Browse the rules of the trade.",
        customSynopsis = "unthrum rules [SUBJECT | ID] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum rules damping%n  unthrum rules damping/ringing-bay%n%n")
final class Rules implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "SUBJECT | ID", arity = "0..1", description = "A subject, or one rule's id.")
    private String name;

    @Mixin
    private Look look = new Look();

    Rules(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        RulesText text = new RulesText(Knowledge.load(), look.width(surroundings), look.style(surroundings));
        surroundings.print(name == null ? text.subjects() : name.contains("/") ? card(text) : subject(text));
    }

    private String subject(RulesText text) {
        return text.subject(name).orElseThrow(() -> WrongUse.unknown("subject '" + name + "'", name, text.subjectNames()));
    }

    private String card(RulesText text) {
        RuleCard card = text.find(name).orElseThrow(() -> {
            String meant = Nearest.remedy(name, text.ruleIds());
            return new WrongUse("no rule '" + name + "'; " + (meant.isEmpty() ? "" : meant + " or ")
                    + "list a subject's rules with 'unthrum rules SUBJECT'");
        });
        return text.card(card, source(card.subject()));
    }

    private static List<String> source(String subject) {
        return new String(Resources.bytes("unthrum/rules/" + subject + ".drl"), StandardCharsets.UTF_8).lines().toList();
    }
}
