package unthrum.survey;

import java.util.List;
import unthrum.reading.Words;

/** Reports ribs that leave their panel or lie on one another, and more taps than the ribs leave bays. */
final class PanelRibs {
    private PanelRibs() {
    }

    static void check(PanelCheck check) {
        List<PanelEntry.Rib> ribs = check.panel().ribs().orElse(List.of());
        for (int i = 0; i < ribs.size(); i++) {
            PanelEntry.Rib rib = ribs.get(i);
            double side = rib.runs() == Run.ACROSS ? check.first() : check.second();
            String key = "ribs[" + i + "].at";
            if (!within(rib, side)) {
                check.report(key, "a " + name(rib) + " from " + PanelCheck.length(start(rib)) + " to "
                        + PanelCheck.length(end(rib)), "a rib within the " + PanelCheck.length(side)
                        + " of the side that it divides", turned(check, rib));
            } else {
                overlap(check, ribs.subList(0, i), rib, key);
            }
            bead(check, rib, "ribs[" + i + "]");
        }
        taps(check, ribs);
    }

    private static void bead(PanelCheck check, PanelEntry.Rib rib, String path) {
        double run = rib.runs() == Run.ACROSS ? check.second() : check.first();
        if (rib.kind() != RibKind.BEAD && (rib.section().isPresent() || rib.stopsShort().isPresent())) {
            check.report(path, "the section or the ends of a " + name(rib), "them on beads only", "");
        } else if (rib.stopsShort().filter(s -> s.si() >= run / 2).isPresent()) {
            check.report(path + ".stops short", "a bead that ends " + rib.stopsShort().get() + " from both edges",
                    "less than half of the " + PanelCheck.length(run) + " that it runs along", "");
        }
    }

    private static void overlap(PanelCheck check, List<PanelEntry.Rib> earlier, PanelEntry.Rib rib, String key) {
        for (int j = 0; j < earlier.size(); j++) {
            PanelEntry.Rib other = earlier.get(j);
            boolean meet = start(rib) < end(other) && start(other) < end(rib) || rib.at().si() == other.at().si();
            if (rib.runs() == other.runs() && meet) {
                int line = check.places().line(check.path() + ".ribs[" + j + "]");
                check.report(key, "a " + name(rib) + " at " + rib.at() + " on the " + name(other) + " at " + other.at()
                        + (line == 0 ? "" : " (line " + line + ")"), "ribs that lie apart", "");
                return;
            }
        }
    }

    private static void taps(PanelCheck check, List<PanelEntry.Rib> ribs) {
        int taps = check.panel().tap().map(List::size).orElse(0);
        long bays = bays(ribs);
        if (taps > bays && check.panel().ribs().isPresent()) {
            check.report("tap", taps + " taps on " + (bays == 1 ? "one bay" : bays + " bays"),
                    "one word for the panel, or one for each bay", "");
        }
    }

    static long bays(List<PanelEntry.Rib> ribs) {
        long across = ribs.stream().filter(r -> r.runs() == Run.ACROSS).count();
        return (across + 1) * (ribs.size() - across + 1);
    }

    /** A rib that would fit the other way round was probably meant so. */
    private static String turned(PanelCheck check, PanelEntry.Rib rib) {
        Run other = rib.runs() == Run.ACROSS ? Run.ALONG : Run.ACROSS;
        double side = other == Run.ACROSS ? check.first() : check.second();
        return within(rib, side) ? "did you mean 'runs: " + Words.of(other) + "'?" : "";
    }

    private static boolean within(PanelEntry.Rib rib, double side) {
        return start(rib) >= 0 && end(rib) <= side && rib.at().si() < side;
    }

    private static String name(PanelEntry.Rib rib) {
        return Words.of(rib.kind());
    }

    private static double start(PanelEntry.Rib rib) {
        return rib.at().si() - width(rib) / 2;
    }

    private static double end(PanelEntry.Rib rib) {
        return rib.at().si() + width(rib) / 2;
    }

    private static double width(PanelEntry.Rib rib) {
        return rib.width().map(w -> w.si()).orElse(0.0);
    }
}
