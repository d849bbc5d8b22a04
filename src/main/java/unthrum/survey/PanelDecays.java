package unthrum.survey;

import java.util.List;
import java.util.Locale;

/** Reports measured decays of bays that are not there, and such as no sheet metal has. */
final class PanelDecays {

    /** Loss factor = 2.2/(frequency × time to fall by 60 dB), ISO 10848-1. */
    private static final double ROUNDED = 2.2;
    /** Metal alone loses this much; handbooks print nothing below. Bies, Hansen and Howard, table C.1. */
    private static final double LEAST = 1e-4;
    /** Beyond it a note no longer rings: it is a knock. From memory. */
    private static final double MOST = 1;

    private PanelDecays() {
    }

    static void check(PanelCheck check) {
        List<PanelEntry.Decay> decays = check.panel().decay().orElse(List.of());
        for (int i = 0; i < decays.size(); i++) {
            String key = "decay[" + i + "]";
            bay(check, decays.subList(0, i), decays.get(i), key);
            form(check, decays.get(i), key);
        }
    }

    private static void bay(PanelCheck check, List<PanelEntry.Decay> earlier, PanelEntry.Decay decay, String key) {
        long bays = check.panel().ribs().map(PanelRibs::bays).orElse(1L);
        if (decay.bay() > bays) {
            check.report(key + ".bay", "bay " + decay.bay() + " of " + (bays == 1 ? "one bay" : bays + " bays"),
                    "a bay between the panel's ribs", "");
        } else if (earlier.stream().anyMatch(d -> d.bay() == decay.bay())) {
            check.report(key + ".bay", "bay " + decay.bay() + " again", "one decay for each bay", "");
        }
    }

    private static void form(PanelCheck check, PanelEntry.Decay decay, String key) {
        if (decay.time().isPresent() == decay.lossFactor().isPresent()) {
            check.report(key, decay.time().isPresent() ? "a time and a loss factor" : "neither a time nor a loss factor",
                    "the time to fall by 60 dB, or a loss factor", "");
        } else if (decay.time().isPresent() && decay.at().isEmpty()) {
            check.report(key, "a time without its frequency", "the frequency of the note", "add 'at'");
        } else if (decay.time().isPresent()) {
            double lossFactor = ROUNDED / (decay.at().get().si() * decay.time().get().si());
            if (lossFactor < LEAST || lossFactor > MOST) {
                check.report(key + ".time", decay.time().get() + " at " + decay.at().get()
                        + ", which makes a loss factor of " + String.format(Locale.ROOT, "%.5f", lossFactor),
                        "a loss factor from 0.0001 to 1", "look at the units");
            }
        }
    }
}
