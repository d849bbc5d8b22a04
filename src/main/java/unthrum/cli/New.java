package unthrum.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

@Command(name = "new", description = "Start a survey of a kind of body, with its usual panels.",
        customSynopsis = "unthrum new BODY [FILE]",
        headerHeading = "Examples:%n  unthrum new van van.yaml%n  unthrum new hatchback%n%n")
final class New implements Callable<Integer> {

    /** The bodies with a starter survey. */
    static final List<String> BODIES = List.of("van", "hatchback", "saloon", "pick-up", "off-roader", "bus");

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "BODY",
            description = "van, hatchback, saloon, pick-up, off-roader or bus.")
    private String body;

    @Parameters(index = "1", paramLabel = "FILE", arity = "0..1",
            description = "The file to write, which must not be there yet; without it, or with -, it is printed.")
    private String file = "-";

    New(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        if (!BODIES.contains(body)) {
            throw WrongUse.unknown("starter survey for '" + body + "'", body, BODIES);
        }
        byte[] starter = Resources.bytes("unthrum/starters/" + body + ".yaml");
        if (file.equals("-")) {
            surroundings.printUtf8(new String(starter, StandardCharsets.UTF_8));
        } else {
            Written.anew(Path.of(file), starter);
            surroundings.err().println("Wrote " + file + ". Fill in what you measure, then: unthrum advise " + file);
        }
        return ExitCode.DONE.code();
    }
}
