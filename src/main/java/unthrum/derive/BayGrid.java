package unthrum.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import unthrum.facts.Rib;
import unthrum.survey.RibKind;
import unthrum.survey.Run;

/** The open areas that ribs leave, in reading order: along the first side, then along the second. */
public record BayGrid(List<Span> alongLength, List<Span> alongWidth) {

    /**
     * A clear stretch between edges or ribs; a closed rib holds its end like a clamp, a bead like a hinge.
     *
     * @param from where it begins, in m from the panel's start
     */
    public record Span(double from, double length, int clampedEnds) {
    }

    public static BayGrid of(double length, double width, List<Rib> ribs) {
        return new BayGrid(spans(length, ribs, Run.ACROSS), spans(width, ribs, Run.ALONG));
    }

    /** The one of these stretches, each longer than a bay's, that a bay's stretch lies in. */
    static Span around(Span inner, List<Span> outer) {
        double middle = inner.from() + inner.length() / 2;
        return outer.stream().filter(s -> middle < s.from() + s.length()).findFirst().orElseThrow();
    }

    private static List<Span> spans(double side, List<Rib> ribs, Run run) {
        List<Rib> ordered = ribs.stream().filter(r -> r.runs() == run)
                .sorted(Comparator.comparingDouble(Rib::at)).toList();
        List<Span> spans = new ArrayList<>();
        double from = 0;
        int clamped = 0;
        for (Rib rib : ordered) {
            int end = rib.kind() == RibKind.BEAD ? 0 : 1;
            add(spans, from, rib.at() - rib.breadth() / 2 - from, clamped + end);
            from = rib.at() + rib.breadth() / 2;
            clamped = end;
        }
        add(spans, from, side - from, clamped);
        return spans;
    }

    private static void add(List<Span> spans, double from, double length, int clampedEnds) {
        if (length > 0) {
            spans.add(new Span(from, length, clampedEnds));
        }
    }
}
