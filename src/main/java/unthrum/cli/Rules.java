package unthrum.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import unthrum.knowledge.Knowledge;
import unthrum.reading.Nearest;
import unthrum.report.RulesText;

@Command(name = "rules", description = "Browse the rules of the trade.",
        customSynopsis = "unthrum rules [SUBJECT | ID] [--width N] [--plain]",
        headerHeading = "Examples:%n  unthrum rules damping%n  unthrum rules damping/ringing-bay%n"
                + "  unthrum rules worth/kilogram%n%n")
final class Rules implements Runnable {

    private final Surroundings surroundings;

    @Parameters(paramLabel = "SUBJECT | ID", arity = "0..1", description =
            "A subject, or the id of one rule or one number.")
    private String name;

    @Mixin
    private Look look = new Look();

    Rules(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        RulesText text = new RulesText(Knowledge.load(), look.width(surroundings), look.style(surroundings));
        surroundings.print(name == null ? text.subjects() : name.contains("/") ? named(text) : subject(text));
    }

    private String subject(RulesText text) {
        return text.subject(name).orElseThrow(() -> WrongUse.unknown("subject '" + name + "'", name, text.subjectNames()));
    }

    private String named(RulesText text) {
        return text.find(name).map(card -> text.card(card, source(card.subject()))).or(() -> text.number(name))
                .orElseThrow(() -> {
                    List<String> ids = Stream.concat(text.ruleIds().stream(), text.numberIds().stream()).toList();
                    String meant = Nearest.remedy(name, ids);
                    return new WrongUse("no rule or number '" + name + "'; " + (meant.isEmpty() ? "" : meant + " or ")
                            + "list a subject's rules with 'unthrum rules SUBJECT'");
                });
    }

    private static List<String> source(String subject) {
        return new String(Resources.bytes("unthrum/rules/" + subject + ".drl"), StandardCharsets.UTF_8).lines().toList();
    }
}
