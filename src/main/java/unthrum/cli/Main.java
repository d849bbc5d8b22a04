package unthrum.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;

/** The program. Only the command that is called is built; help builds them all. */
@Command(name = "unthrum", description = "Advice on what to stick on the bare panels of a vehicle, and what to leave bare.",
        headerHeading = "Examples:%n  unthrum new van van.yaml%n  unthrum advise van.yaml%n%n",
        synopsisSubcommandLabel = "COMMAND")
public final class Main {

    private static final Map<String, Function<Surroundings, Object>> COMMANDS = new LinkedHashMap<>();

    static {
        COMMANDS.put("advise", Advise::new);
        COMMANDS.put("why", Why::new);
        COMMANDS.put("ask", Ask::new);
        COMMANDS.put("cut", Cut::new);
        COMMANDS.put("jobcard", JobCardCommand::new);
        COMMANDS.put("audit", AuditJob::new);
        COMMANDS.put("compare", Compare::new);
        COMMANDS.put("handover", HandOver::new);
        COMMANDS.put("drill", Drill::new);
        COMMANDS.put("new", New::new);
        COMMANDS.put("rules", Rules::new);
        COMMANDS.put("schema", Schema::new);
    }

    private Main() {
    }

    public static void main(String[] arguments) {
        System.exit(run(Surroundings.ofProcess(), arguments));
    }

    /** Runs a command within the given surroundings. */
    static int run(Surroundings surroundings, String... arguments) {
        Failures failures = new Failures(surroundings);
        try {
            CommandLine program = program(surroundings, arguments);
            program.setParameterExceptionHandler(failures::wrongArguments);
            program.setExecutionExceptionHandler(failures::failed);
            return arguments.length == 0 ? help(program, surroundings) : program.execute(arguments);
        } catch (RuntimeException | LinkageError | OutOfMemoryError | StackOverflowError e) {
            return failures.defect(e);
        }
    }

    private static CommandLine program(Surroundings surroundings, String... arguments) {
        CommandLine program = new CommandLine(new Main());
        Optional<String> named = Arrays.stream(arguments).findFirst().filter(COMMANDS::containsKey);
        COMMANDS.forEach((name, command) -> {
            if (named.isEmpty() || named.get().equals(name)) {
                program.addSubcommand(name, command.apply(surroundings));
            }
        });
        settle(program, surroundings);
        program.getSubcommands().values().forEach(c -> settle(c, surroundings));
        return program;
    }

    private static void settle(CommandLine command, Surroundings surroundings) {
        command.setOut(new java.io.PrintWriter(surroundings.out(), true, surroundings.charset()));
        command.setErr(new java.io.PrintWriter(surroundings.err(), true, surroundings.charset()));
        command.setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
        command.getCommandSpec().mixinStandardHelpOptions(false)
                .addMixin("common", CommandLine.Model.CommandSpec.forAnnotatedObject(new CommonOptions()))
                .versionProvider(new CommonOptions())
                .exitCodeOnInvalidInput(ExitCode.WRONG_USE.code())
                .exitCodeOnExecutionException(ExitCode.DEFECT.code());
        command.getCommandSpec().usageMessage().exitCodeListHeading("%nExit codes:%n").exitCodeList(exitCodes())
                .width(100);
    }

    private static Map<String, String> exitCodes() {
        Map<String, String> codes = new LinkedHashMap<>();
        for (ExitCode code : ExitCode.values()) {
            codes.put(String.valueOf(code.code()), code.meaning());
        }
        return codes;
    }

    private static int help(CommandLine program, Surroundings surroundings) {
        surroundings.err().print(program.getUsageMessage(Help.Ansi.OFF));
        surroundings.err().flush();
        return ExitCode.WRONG_USE.code();
    }
}
