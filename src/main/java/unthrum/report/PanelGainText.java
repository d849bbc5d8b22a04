package unthrum.report;

import java.util.List;
import unthrum.effect.PanelGain;
import unthrum.reading.Words;

/** What one panel has to do with each aim, and what its layers take of it; a loss is told like a gain. */
final class PanelGainText {

    /** Less than this of the bare vehicle's is not told: it would read as nothing. */
    static final double TOLD = 0.0005;

    private PanelGainText() {
    }

    /** One line for each aim that gains or loses. */
    static List<String> lines(List<PanelGain> gains) {
        return gains.stream().filter(g -> Math.abs(g.taken().about()) >= TOLD).map(PanelGainText::line).toList();
    }

    private static String line(PanelGain gain) {
        String aim = English.capital(Words.of(gain.aim())) + ": ";
        String of = " of the " + GainWords.share(gain.bare()) + " that comes from this panel";
        return gain.loses() ? aim + "lets " + GainWords.share(-gain.taken().about()) + " more of the vehicle's through ("
                + GainWords.share(Math.max(0, -gain.taken().high())) + " to " + GainWords.share(-gain.taken().low()) + ")."
                : aim + "takes " + GainWords.share(gain.taken().about()) + of + " (" + GainWords.share(gain.taken().low())
                + " to " + GainWords.share(gain.taken().high()) + ").";
    }
}
