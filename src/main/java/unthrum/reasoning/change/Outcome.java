package unthrum.reasoning.change;

import java.util.SortedSet;
import java.util.TreeSet;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Verdict;

/** What a panel gets, as far as a change counts: its verdict and which layers lie where. */
public record Outcome(Verdict verdict, SortedSet<Spot> spots) {

    public static Outcome of(PanelAdvice advice) {
        SortedSet<Spot> spots = new TreeSet<>();
        for (Laid laid : advice.layup().layers()) {
            laid.patches().forEach(patch -> spots.add(new Spot(laid.layer(), patch.place())));
        }
        if (advice.verdict() != Verdict.HOLD) {
            for (Closing closing : advice.closings()) {
                Place place = closing.opening().place();
                spots.add(new Spot(Layer.SEAL, place));
            }
        }
        return new Outcome(advice.verdict(), spots);
    }
}
