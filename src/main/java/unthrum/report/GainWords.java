package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import unthrum.effect.Layup;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;

/** Gains in words, and the true reason why one layup is taken before another: which figure, and by how much. */
final class GainWords {

    /** Everything that the client wants to be rid of, in the bare vehicle. */
    static final String ALL = "of what the client wants rid of";

    /** Fewer per cent read as nothing. */
    private static final double LEAST_PERCENT = 0.0005;

    /** Below this gains read alike, as they are printed. */
    private static final double PRINTED = 0.0005;

    private GainWords() {
    }

    /** '3.1 %', '0.04 %', '0.005 %'; what rounds to nothing reads as nothing. */
    static String share(double share) {
        double percent = 100 * share;
        double size = Math.abs(percent);
        if (size < LEAST_PERCENT) {
            return "0 %";
        }
        return String.format(Locale.ROOT, size >= 0.095 ? "%.1f %%" : size >= 0.0095 ? "%.2f %%" : "%.3f %%", percent);
    }

    /** 'Butyl-2 takes 1.2 % of what the client wants rid of; what is laid takes 1.9 %.' */
    static String why(Scored with, PanelAdvice advice) {
        return English.capital(clause(with, advice.laid(), advice.isOfTheJob()));
    }

    /** Of a panel judged by itself. */
    static String why(Scored with, Scored chosen) {
        return English.capital(clause(with, chosen, false));
    }

    /**
     * The same within a sentence.
     *
     * @param ofTheJob whether the whole job decided what is laid, and not the panel by itself
     */
    static String clause(Scored with, Scored laid, boolean ofTheJob) {
        boolean many = with.layup().layers().size() > 1;
        String names = LayupWords.names(with.layup());
        if (with.gain() < -LEAST_PERCENT / 100) {
            return names + (many ? " together" : "") + " would make it " + share(-with.gain()) + " worse.";
        }
        if (Math.abs(with.gain()) < LEAST_PERCENT / 100 && with.trade() < PRINTED) {
            return names + (many ? " together" : "") + " would bring nothing.";
        }
        String takes = names + (many ? " together take " : " takes ");
        if (laid.layup().isEmpty()) {
            return takes + share(with.gain()) + " " + ALL + ", not worth " + costs(with.layup()) + ".";
        }
        return takes + against(with, laid, ofTheJob, many);
    }

    /** Why what takes so much is not taken: the first figure in which it is worse, and by how much. */
    private static String against(Scored with, Scored laid, boolean ofTheJob, boolean many) {
        double less = laid.gain() - with.gain();
        if (less > PRINTED) {
            return share(with.gain()) + " " + ALL + "; what is laid takes " + share(laid.gain()) + ".";
        }
        String much = less < -PRINTED ? share(with.gain()) + " " + ALL + " against " + share(laid.gain())
                : "as much away as what is laid";
        if (laid.trade() - with.trade() > PRINTED) {
            return much + ", but " + (many ? "leave" : "leaves") + " out what the trade asks for without a formula.";
        }
        String dearer = dearer(with.layup(), laid.layup());
        if (!dearer.isEmpty()) {
            return much + ", but " + (many ? "are " : "is ") + dearer + ".";
        }
        return much + (ofTheJob ? ", but the whole job's packs and limits decided otherwise." : "; there is nothing between them.");
    }

    /** Where no formula tells a gain: what the trade's weights count for it. */
    static Optional<String> trade(PanelAdvice advice) {
        double trade = advice.laid().trade();
        return trade < PRINTED ? Optional.empty()
                : Optional.of("Where no formula reaches, the trade's weight counts it as " + share(trade) + " " + ALL + ".");
    }

    /** What the panel would get if nothing had to be shared, and what it gets. */
    static String ofTheJob(PanelAdvice advice) {
        return "By itself this panel would get " + gains(advice.best()) + ". With the job's packs and limits shared out it gets "
                + gains(advice.laid()) + ".";
    }

    private static String gains(Scored scored) {
        return scored.layup().isEmpty() ? "nothing" : LayupWords.names(scored.layup()) + " (" + share(scored.gain()) + " " + ALL + ")";
    }

    /** Why a panel stays bare though something may be laid: 'Not worth it: butyl-2 would take 0.01 % of …'. */
    static String slight(PanelAdvice advice) {
        Scored slight = advice.slight().orElseThrow();
        boolean rings = advice.wants().stream().anyMatch(w -> w.stands() && w.layer() == Layer.DAMPING);
        return "Not worth it: " + LayupWords.names(slight.layup()) + " would take " + share(slight.gain()) + " " + ALL
                + " for " + costs(slight.layup()) + "."
                + (rings ? " If it rings as loud as the survey says, tap it again." : "");
    }

    private static String costs(Layup layup) {
        return Amounts.mass(layup.mass()) + " and " + Amounts.money(Math.round(layup.price()), layup.materials().get(0).price().currency());
    }

    /** '1.2 kg heavier and 14 dearer'. */
    private static String dearer(Layup with, Layup chosen) {
        List<String> how = new ArrayList<>();
        if (with.mass() - chosen.mass() > 0.005) {
            how.add(Amounts.mass(with.mass() - chosen.mass()) + " heavier");
        }
        if (with.price() - chosen.price() > 0.5) {
            how.add(Amounts.money(Math.round(with.price() - chosen.price()), with.materials().get(0).price().currency())
                    + " dearer");
        }
        if (how.isEmpty() && with.thickness() - chosen.thickness() > 5e-5) {
            how.add(Amounts.length(with.thickness() - chosen.thickness()) + " thicker");
        }
        return English.and(how);
    }
}
