package unthrum.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import unthrum.reading.Problems;

/** Turns what went wrong into a few lines on the error stream and an exit code. */
final class Failures {

    /** So many problems fit one screen. */
    static final int ONE_SCREEN = 20;

    private final Surroundings surroundings;

    Failures(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    int wrongArguments(ParameterException e, String[] arguments) {
        CommandLine command = e.getCommandLine();
        say(said(e, command));
        say("See 'unthrum " + path(command) + "--help'.");
        return ExitCode.WRONG_USE.code();
    }

    private static String said(ParameterException e, CommandLine command) {
        if (command.getParent() == null && e instanceof UnmatchedArgumentException unmatched) {
            String written = unmatched.getUnmatched().get(0);
            return WrongUse.unknown("command '" + written + "'", written, command.getSubcommands().keySet()).getMessage();
        }
        return e.getMessage().replaceAll("is not an? (int|long)$", "is not a whole number");
    }

    private static String path(CommandLine command) {
        return command.getParent() == null ? "" : command.getCommandName() + " ";
    }

    int failed(Exception e, CommandLine command, CommandLine.ParseResult result) {
        if (e instanceof Problems problems) {
            say(problems.first(ONE_SCREEN));
            return ExitCode.WRONG_USE.code();
        }
        if (e instanceof WrongUse) {
            say(e.getMessage());
            return ExitCode.WRONG_USE.code();
        }
        if (e instanceof IOException || e instanceof UncheckedIOException) {
            Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
            say("cannot read or write " + cause.getMessage());
            return ExitCode.WRONG_USE.code();
        }
        return defect(e);
    }

    /** One line, and how to report it; the stack trace only for those who ask. */
    int defect(Throwable e) {
        String what = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
        say("unthrum has a defect: " + e.getClass().getSimpleName() + ": " + what
                + " (please report this line with your survey; UNTHRUM_TRACE=1 shows more)");
        if (surroundings.has("UNTHRUM_TRACE")) {
            e.printStackTrace(surroundings.err());
        }
        return ExitCode.DEFECT.code();
    }

    private void say(String line) {
        surroundings.err().println(line);
        surroundings.err().flush();
    }
}
