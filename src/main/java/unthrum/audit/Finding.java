package unthrum.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Place;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Standing;
import unthrum.reading.Words;
import unthrum.reasoning.engine.Judgement;

/**
 * One thing wrong with a job.
 *
 * @param what     the layer, work or thing it is about, in words
 * @param against  the conclusions that the job does not meet; empty where no rule is concerned
 * @param rule     a rule that is named though it does not speak here
 * @param figures  the job's own numbers, the found one before its bound
 * @param evidence what the as-built file says of it
 */
public record Finding(Severity severity, Mistake mistake, Place place, String what, List<Judgement> against,
                      Optional<String> rule, List<Figure> figures, List<Evidence> evidence) {

    /** The ids of the rules concerned. */
    public List<String> rules() {
        List<String> ids = against.stream().flatMap(j -> j.reasons().stream()).map(r -> r.rule().id()).distinct()
                .sorted().toList();
        return ids.isEmpty() ? rule.stream().toList() : ids;
    }

    /** The rules concerned, each once. */
    public List<RuleCard> cards() {
        return against.stream().flatMap(j -> j.reasons().stream()).map(r -> r.rule()).distinct().toList();
    }

    /** What follows from it: what the strongest rule teaches, where its own words say more than the mistake's. */
    public String consequence() {
        boolean rulesSayMore = mistake == Mistake.LAYER_WHERE_NONE_MAY_BE || mistake == Mistake.LIMIT_BROKEN
                || mistake == Mistake.WORK_NOT_DONE || mistake == Mistake.COVERED_BEFORE_READY;
        return cards().stream().filter(c -> rulesSayMore).min(Comparator.comparing(RuleCard::standing))
                .map(RuleCard::teaches).orElse(mistake.consequence());
    }

    /** Whether it must be dealt with before the vehicle leaves. */
    public boolean beforeLeaving() {
        return severity.atLeast(Severity.FAULT) || severity == Severity.UNPROVEN && against.stream()
                .anyMatch(j -> j.standing().prevailsOver(Standing.FIT));
    }

    /** In short: 'danger: roof-middle: vinyl-barrier-2: a layer lies where none may be [barrier/not-on-roof]'. */
    @Override
    public String toString() {
        return Words.of(severity) + ": " + place + ": " + what + ": " + mistake.words()
                + (figures.isEmpty() ? "" : " " + figures) + (rules().isEmpty() ? "" : " " + rules());
    }
}
