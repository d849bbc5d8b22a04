package unthrum.audit;

import java.util.List;

/** How far it is shown that a piece of work was done, with what is said of it. */
record Proof(Degree degree, List<Evidence> evidence) {

    /** From best to worst; nothing said is the least known, not done is known. */
    enum Degree { PROVEN, STATED, SILENT, DENIED }

    static final Proof SILENT = new Proof(Degree.SILENT, List.of());

    boolean isProven() {
        return degree == Degree.PROVEN;
    }
}
