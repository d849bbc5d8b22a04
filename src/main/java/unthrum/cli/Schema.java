package unthrum.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "schema",
        description = "Print a JSON Schema, of surveys if none is named.",
        customSynopsis = "unthrum schema [KIND]",
        headerHeading = "Examples:%n  unthrum schema > survey.schema.json%n  unthrum schema plan%n%n")
final class Schema implements Runnable {

    private static final List<String> KINDS = List.of("survey", "plan", "case", "changes", "what-if", "questions",
            "doubts", "built", "audit", "comparison", "handover", "cut", "jobcard");

    private final Surroundings surroundings;

    @Parameters(paramLabel = "KIND", arity = "0..1", description =
            "survey (if none is named), plan, case, changes, what-if, questions, doubts, built, audit, comparison,"
                    + " handover, cut or jobcard.")
    private String kind = "survey";

    Schema(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        if (!KINDS.contains(kind)) {
            throw WrongUse.unknown("schema '" + kind + "'", kind, KINDS);
        }
        byte[] schema = Resources.bytes("unthrum/" + kind + ".schema.json");
        surroundings.printUtf8(new String(schema, StandardCharsets.UTF_8));
    }
}
