package unthrum.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import unthrum.knowledge.RuleCard;
import unthrum.reasoning.engine.Judgement;
import unthrum.reasoning.engine.Reason;

/**
 * What one rule says on one panel, told once: the clause for the first place, and the other places where the same
 * holds, each with the numbers in which it differs.
 */
record Told(RuleCard rule, Reason first, String clause) {

    /** A reason together with the conclusion it holds up. */
    private record Spoken(Judgement judgement, Reason reason) {
    }

    /** The reasons of the judgements, those of one rule told together, in the order given. */
    static List<Told> of(Stream<Judgement> judgements, Sentences sentences) {
        Map<RuleCard, List<Spoken>> byRule = new LinkedHashMap<>();
        judgements.forEach(j -> j.reasons().forEach(r -> byRule.computeIfAbsent(r.rule(), k -> new ArrayList<>())
                .add(new Spoken(j, r))));
        List<Told> told = new ArrayList<>();
        byRule.values().forEach(spoken -> told.addAll(together(spoken, sentences)));
        return told;
    }

    private static List<Told> together(List<Spoken> spoken, Sentences sentences) {
        Spoken first = spoken.get(0);
        Map<String, String> others = new LinkedHashMap<>();
        List<Told> apart = new ArrayList<>();
        for (Spoken other : spoken.subList(1, spoken.size())) {
            String name = name(first, other, sentences);
            if (name.isEmpty()) {
                apart.add(new Told(other.reason.rule(), other.reason, sentences.because(other.reason)));
            } else {
                String note = differences(first.reason, other.reason, sentences);
                others.putIfAbsent(name, note.equals(" (" + name + ")") ? "" : note);
            }
        }
        String clause = sentences.because(first.reason);
        if (!others.isEmpty()) {
            clause += "; likewise " + English.andNumbered(List.copyOf(others.keySet()), others::get);
        }
        List<Told> all = new ArrayList<>(List.of(new Told(first.reason.rule(), first.reason, clause)));
        apart.stream().filter(a -> !a.clause.equals(sentences.because(first.reason))).distinct().forEach(all::add);
        return all;
    }

    /** How to name the other: by its place, or the part that its sentence is about, or what else differs. */
    private static String name(Spoken first, Spoken other, Sentences sentences) {
        if (!first.judgement.conclusion().place().equals(other.judgement.conclusion().place())) {
            return sentences.place(other.judgement.conclusion().place());
        }
        List<String> mine = sentences.placesIn(other.reason);
        List<String> theirs = sentences.placesIn(first.reason);
        for (int i = 0; i < mine.size(); i++) {
            if (!mine.get(i).equals(theirs.get(i))) {
                return mine.get(i);
            }
        }
        List<String> theirValues = sentences.valuesIn(first.reason);
        return sentences.valuesIn(other.reason).stream().filter(v -> !theirValues.contains(v)).findFirst().orElse("");
    }

    private static String differences(Reason first, Reason other, Sentences sentences) {
        List<String> mine = sentences.valuesIn(other);
        List<String> theirs = sentences.valuesIn(first);
        boolean numbersDiffer = false;
        List<String> differing = new ArrayList<>();
        for (int i = 0; i < mine.size(); i++) {
            boolean differs = !mine.get(i).equals(theirs.get(i));
            numbersDiffer |= differs && isNumber(mine.get(i));
            if (differs) {
                differing.add(mine.get(i));
            }
        }
        List<String> shown = numbersDiffer ? mine.stream().filter(Told::isNumber).toList() : differing;
        return shown.isEmpty() ? "" : " (" + String.join(", ", shown) + ")";
    }

    private static boolean isNumber(String value) {
        return Character.isDigit(value.charAt(0)) || value.charAt(0) == '-';
    }

    /** The clause as a sentence with the rule's id behind it. */
    String sentence() {
        return English.sentence(clause) + " [" + rule.id() + "]";
    }

    /** What to do, then why. */
    String advised(Sentences sentences) {
        return advised(sentences.advice(first), clause) + " [" + rule.id() + "]";
    }

    static String advised(String advice, String because) {
        return advice.contains(":") ? English.sentence(advice) + " " + English.sentence(because)
                : English.capital(advice) + ": " + because + ".";
    }
}
