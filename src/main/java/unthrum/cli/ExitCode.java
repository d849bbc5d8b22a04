package unthrum.cli;

/** What the program's end says to whoever started it. */
public enum ExitCode {
    DONE(0, "done"),
    FAULTS_FOUND(1, "a check found faults"),
    WRONG_USE(2, "wrong use or a faulty file; nothing was written"),
    DEFECT(70, "a defect of this program");

    private final int code;
    private final String meaning;

    ExitCode(int code, String meaning) {
        this.code = code;
        this.meaning = meaning;
    }

    public int code() {
        return code;
    }

    public String meaning() {
        return meaning;
    }
}
