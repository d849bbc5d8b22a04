package unthrum.audit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import unthrum.facts.Place;
import unthrum.reasoning.engine.Judgement;

/** What a finding comes down to: how heavy, what kind, where, and by which rules. */
record Expected(Severity severity, Mistake mistake, Place place, Set<String> rules) {

    static Expected of(Finding finding) {
        return new Expected(finding.severity(), finding.mistake(), finding.place(), new TreeSet<>(finding.rules()));
    }

    static Expected of(Severity severity, Mistake mistake, Place place, List<Judgement> against) {
        return new Expected(severity, mistake, place, against.stream().flatMap(j -> j.reasons().stream())
                .map(r -> r.rule().id()).collect(Collectors.toCollection(TreeSet::new)));
    }
}
