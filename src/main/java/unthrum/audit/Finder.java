package unthrum.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Place;
import unthrum.reasoning.engine.Judgement;

/** Collects findings. */
final class Finder {
    private final List<Finding> findings = new ArrayList<>();

    void found(Severity severity, Mistake mistake, Place place, String what, List<Judgement> against,
               List<Figure> figures, List<Evidence> evidence) {
        findings.add(new Finding(severity, mistake, place, what, against, Optional.empty(), figures, evidence));
    }

    void found(Severity severity, Mistake mistake, Place place, String what, List<Judgement> against) {
        found(severity, mistake, place, what, against, List.of(), List.of());
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    /** Each finding once: two pieces of one material may break the same limit. */
    List<Finding> findings() {
        return findings.stream().distinct().toList();
    }
}
