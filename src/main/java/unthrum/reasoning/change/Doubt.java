package unthrum.reasoning.change;

import java.util.Comparator;
import java.util.List;
import unthrum.facts.Bay;
import unthrum.facts.Question;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.WeighedWant;
import unthrum.derive.Assumed;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.PanelEntry;
import unthrum.survey.Tap;

/**
 * Why a panel is worth an older hand's look.
 *
 * @param flips       changes within what a second measurement may find
 * @param assumptions what was assumed and matters
 * @param taps        questions that doubt a tap somebody wrote
 * @param slight      whether it stays bare because hardly anything would be gained
 * @param contests    wants outvoted by a reason of no higher standing than their own
 */
public record Doubt(PanelAdvice advice, List<Change> flips, List<Assumed> assumptions, List<Judgement> taps,
                    List<WeighedWant> contests, boolean slight) {

    public static Doubt of(PanelTrial trial, PanelEntry panel) {
        PanelAdvice advice = trial.advise(panel);
        return new Doubt(advice, new Changes(trial, panel).near(), advice.restsOn(),
                advice.questions().stream().filter(j -> doubtsTap(j, advice)).toList(),
                advice.outvoted().stream().filter(Doubt::isContest).toList(), advice.slight().isPresent());
    }

    /** The panels worth a look, those with most reasons first. */
    public static List<Doubt> of(PanelTrial trial, List<PanelEntry> panels) {
        return Hands.share(trial, panels, hand -> panel -> of(hand, panel)).stream().filter(d -> d.weight() > 0)
                .sorted(Comparator.comparingInt(Doubt::weight).reversed()).toList();
    }

    /** How many reasons there are to look; a tap against the formula counts most, for it costs a knock to settle. */
    int weight() {
        return 2 * taps.size() + flips.size() + assumptions.size() + contests.size() + (slight ? 1 : 0);
    }

    private static boolean doubtsTap(Judgement question, PanelAdvice advice) {
        return question.conclusion() instanceof Question asked && asked.fact().equals("tap")
                && advice.panel().facts().all(Bay.class)
                        .anyMatch(b -> b.place().equals(asked.place()) && b.tap() != Tap.NOT_TAPPED);
    }

    private static boolean isContest(WeighedWant want) {
        return want.vetoes().stream().allMatch(v -> v.standing() == want.judgement().standing());
    }
}
