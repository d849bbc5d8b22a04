package unthrum.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import unthrum.effect.Layup;
import unthrum.material.Layer;
import unthrum.reasoning.PanelAdvice;
import unthrum.reasoning.Scored;

/** Gains in words, and the true reason why one layup is taken before another: which figure, and by how much. */
final class GainWords {

    /** Everything that the client wants to be rid of, in the bare vehicle. */
    static final String ALL = "of what the client wants rid of";

    /** Below this gains read alike, as they are printed. */
    private static final double PRINTED = 0.0005;

    private GainWords() {
    }

    /** '3.1 %', '0.04 %'. */
    static String share(double share) {
        double percent = 100 * share;
        double size = Math.abs(percent);
        return String.format(Locale.ROOT, size >= 0.095 || size == 0 ? "%.1f %%" : "%.2f %%",
                percent + 0.0);
    }

    /** 'Butyl-2 takes 1.2 % of what the client wants rid of, butyl-3 1.9 %.' */
    static String why(Scored with, Scored chosen) {
        return English.capital(clause(with, chosen));
    }

    /** The same within a sentence. */
    static String clause(Scored with, Scored chosen) {
        boolean many = with.layup().layers().size() > 1;
        String takes = LayupWords.names(with.layup()) + (many ? " together take " : " takes ");
        double less = chosen.gain() - with.gain();
        if (chosen.layup().isEmpty()) {
            return takes + share(with.gain()) + " " + ALL + ", not worth " + costs(with.layup()) + ".";
        }
        if (less > PRINTED) {
            return takes + share(with.gain()) + " " + ALL + ", " + LayupWords.names(chosen.layup()) + " "
                    + share(chosen.gain()) + ".";
        }
        if (chosen.trade() - with.trade() > PRINTED) {
            return takes + "as much away, but " + (many ? "leave" : "leaves")
                    + " out what the trade asks for without a formula.";
        }
        String dearer = dearer(with.layup(), chosen.layup());
        return takes + (less < -PRINTED ? share(with.gain()) + " " + ALL + " against " + share(chosen.gain())
                : "as much away") + (dearer.isEmpty() ? ", and no weight, price or thickness parts the two."
                : ", but " + (many ? "are " : "is ") + dearer + ".");
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
