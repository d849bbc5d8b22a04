package unthrum.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import unthrum.drill.Exercise;
import unthrum.drill.Practice;
import unthrum.drill.Progress;
import unthrum.drill.ProgressFile;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.report.DrillText;
import unthrum.survey.Survey;

@Command(name = "drill", description = "Practice: judge panels, say why, and be marked against the case.",
        customSynopsis = {"unthrum drill [FILE [PANEL]] [--seed N] [--count N] [--answers FILE | --sheet]",
            "              [--progress FILE] [--width N] [--plain]", "unthrum drill --report [--progress FILE]"},
        headerHeading = "Examples:%n  unthrum drill%n  unthrum drill van.yaml --count 3%n"
                + "  unthrum drill --seed 7 --count 2 --sheet%n"
                + "  unthrum drill --seed 7 --answers mine.yaml --progress mine-so-far.yaml%n%n")
final class Drill implements Callable<Integer> {

    private static final int USUAL = 5;
    private static final int MOST = 100;
    /** Numbers of made panels stay short enough to be read out. */
    private static final long NUMBERS = 1_000_000;

    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "FILE", arity = "0..1",
            description = "A survey whose panels are to be judged; without it panels are made.")
    private Path file;

    @Parameters(index = "1", paramLabel = "PANEL", arity = "0..1", description = "Only this panel of the survey.")
    private String panel;

    @Option(names = "--seed", paramLabel = "N", description =
            "The number of the first made panel, or how a survey's are shuffled: the same number, the same panels. "
                    + "Without it those come that practise what is due.")
    private Long seed;

    @Option(names = "--count", paramLabel = "N", description = "How many panels, 1 to 100; else 5.")
    private Integer count;

    @Option(names = "--answers", paramLabel = "FILE", description =
            "A YAML file of answers: for each panel what it 'gets' and 'why', the numbers of the reasons.")
    private Path answers;

    @Option(names = "--sheet", description = "Only print the panels, to be answered on paper or in a file.")
    private boolean sheet;

    @Option(names = "--progress", paramLabel = "FILE", description =
            "Where progress is kept; else unthrum/progress.yaml in $XDG_DATA_HOME or ~/.local/share.")
    private Path progress;

    @Option(names = "--report", description = "Show the progress, subject by subject.")
    private boolean report;

    @Mixin
    private Look look = new Look();

    Drill(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        check();
        Knowledge knowledge = Knowledge.load();
        DrillText text = new DrillText(knowledge, look.width(surroundings), look.style(surroundings));
        ProgressFile kept = new ProgressFile(progress != null ? progress : usualFile());
        Progress before = kept.read();
        if (report) {
            surroundings.print(text.report(before, today(), kept.path().toString()));
            return ExitCode.DONE.code();
        }
        List<Exercise> exercises = exercises(new Practice(knowledge, Catalogue.load()), before);
        DrillTalk talk = new DrillTalk(surroundings, text, kept, exercises);
        if (sheet) {
            talk.sheet();
            return ExitCode.DONE.code();
        }
        boolean allRight = answers != null ? talk.mark(Practice.answers(answers, exercises)) : talk.ask();
        return (allRight ? ExitCode.DONE : ExitCode.FAULTS_FOUND).code();
    }

    private void check() {
        if (report && (file != null || seed != null || count != null || answers != null || sheet)) {
            throw new WrongUse("--report stands alone, or with --progress FILE");
        }
        if (sheet && answers != null) {
            throw new WrongUse("--sheet prints the panels and --answers answers them; give one of the two");
        }
        if (answers != null && seed == null && panel == null) {
            throw new WrongUse("--answers needs panels that are known beforehand; give --seed N, or FILE and PANEL");
        }
        if (count != null && (count < 1 || count > MOST)) {
            throw new WrongUse("--count " + count + " is out of range; give 1 to " + MOST);
        }
        if (progress != null && !Files.isDirectory(progress.toAbsolutePath().getParent())) {
            throw new WrongUse("no folder " + progress.toAbsolutePath().getParent() + " for " + progress);
        }
    }

    private List<Exercise> exercises(Practice practice, Progress before) {
        int many = count != null ? count : answers != null ? Practice.answered(answers) : USUAL;
        long first = seed != null ? seed : surroundings.clock().instant().getEpochSecond() % NUMBERS;
        if (file == null) {
            return seed != null ? practice.made(first, many)
                    : due(practice.made(first, Practice.lookedAt(many)), many, before);
        }
        Survey survey = Surveys.read(List.of(file)).get(0);
        if (panel != null) {
            return practice.exercises(survey, List.of(Surveys.entry(survey, panel)), first);
        }
        return seed != null ? practice.of(survey, first, many)
                : due(practice.of(survey, first, survey.panels().size()), many, before);
    }

    private List<Exercise> due(List<Exercise> panels, int many, Progress before) {
        return Practice.due(panels, many, before, today());
    }

    private LocalDate today() {
        return LocalDate.now(surroundings.clock());
    }

    /** By the XDG Base Directory Specification 0.8; a data folder that is not absolute counts as none. */
    private Path usualFile() {
        String data = surroundings.environment().getOrDefault("XDG_DATA_HOME", "");
        Path home = Path.of(surroundings.environment().getOrDefault("HOME", System.getProperty("user.home")));
        Path folder = Path.of(data).isAbsolute() ? Path.of(data) : home.resolve(".local").resolve("share");
        return folder.resolve("unthrum").resolve("progress.yaml");
    }
}
