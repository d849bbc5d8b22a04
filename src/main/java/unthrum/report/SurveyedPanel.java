package unthrum.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import unthrum.drill.Spoken;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.derive.Assumed;
import unthrum.survey.BeadShape;
import unthrum.survey.Curve;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;
import unthrum.survey.Wetness;

/** What a survey says of one panel, in a fitter's words. */
final class SurveyedPanel {

    private static final int LABELS = 12;
    private static final String NONE = "none";

    private final PanelEntry panel;
    private final Entries entries = new Entries();
    private final List<String> none = new ArrayList<>();

    private SurveyedPanel(PanelEntry panel) {
        this.panel = panel;
    }

    /** The vehicle and what its owner is after, in one sentence each. */
    static String vehicle(Survey survey) {
        var vehicle = survey.vehicle();
        List<String> words = new ArrayList<>(List.of(Words.of(vehicle.body()), Words.of(vehicle.drive()),
                English.and(vehicle.use().stream().map(Words::of).toList())));
        vehicle.year().ifPresent(y -> words.add("built " + y));
        vehicle.coldest().ifPresent(c -> words.add("used down to " + c));
        vehicle.indoor().ifPresent(in -> words.add("inside " + in.temperature() + " at " + in.humidity() + " humidity"));
        return English.sentence(String.join(", ", words)) + " Wanted, the weightiest first: "
                + String.join(", ", survey.aims().stream().map(Words::of).toList()) + ".";
    }

    /** @param assumed what is taken where the survey does not say */
    static void print(Page page, PanelEntry panel, Collection<Assumed> assumed) {
        SurveyedPanel words = new SurveyedPanel(panel);
        words.metal();
        words.surroundings();
        words.work();
        if (!words.none.isEmpty()) {
            words.entries.add(NONE, String.join(", ", words.none));
        }
        if (!assumed.isEmpty()) {
            words.entries.add("not stated", "so taken: " + assumed.stream()
                    .map(a -> a.fact() + " " + a.value().replace("degC", "°C")).collect(Collectors.joining(", ")));
        }
        words.entries.print(page, 2, LABELS);
    }

    private void metal() {
        List<String> metal = new ArrayList<>();
        panel.skin().ifPresent(s -> metal.add(s.gauge().map(g -> g + " ").orElse("") + Words.of(s.metal())));
        metal.add(panel.size().get(0) + " along, " + panel.size().get(1) + " across");
        panel.shape().ifPresent(s -> metal.add(shape(s)));
        entries.add("metal", String.join(", ", metal));
        add("ribs", list(panel.ribs(), SurveyedPanel::rib));
        add("tap", panel.tap().map(t -> taps(t.stream().map(Words::of).toList())));
        add("surface", panel.surface().map(SurveyedPanel::surface));
    }

    private static String shape(PanelEntry.Shape shape) {
        return shape.curve() == Curve.FLAT ? "flat" : Words.of(shape.curve())
                + shape.rise().map(r -> " with a rise of " + r).orElse("")
                + shape.farRise().map(r -> " at the near end and " + r + " at the far end").orElse("")
                + shape.riseAlong().map(r -> " with a rise of " + r + " along").orElse("")
                + shape.riseAcross().map(r -> " and " + r + " across").orElse("")
                + shape.radius().map(r -> " to a radius of " + r).orElse("");
    }

    private static String rib(PanelEntry.Rib rib) {
        return Words.of(rib.kind()) + " " + Words.of(rib.runs()) + " it at " + rib.at()
                + rib.width().map(w -> ", " + w + " wide").orElse("")
                + rib.height().map(h -> ", " + h + " tall").orElse("")
                + rib.section().map(s -> s == BeadShape.ROUNDED ? ", rounded" : ", with a flat top").orElse("")
                + rib.stopsShort().map(s -> s.si() > 0 ? ", ends " + s + " from the edges" : ", from edge to edge")
                .orElse("");
    }

    private static String taps(List<String> taps) {
        List<String> numbered = new ArrayList<>();
        for (int i = 0; i < taps.size(); i++) {
            numbered.add("bay " + (i + 1) + " " + taps.get(i));
        }
        return taps.size() == 1 ? taps.get(0) : String.join(", ", numbered);
    }

    private static String surface(PanelEntry.SurfaceEntry surface) {
        List<String> words = new ArrayList<>();
        surface.paint().ifPresent(p -> words.add("paint " + Words.of(p)));
        surface.dirt().ifPresent(d -> words.add("dirt: " + Words.of(d)));
        surface.rust().ifPresent(r -> words.add("rust: " + Words.of(r)));
        surface.old().ifPresent(o -> words.add("old layers: " + Words.of(o)));
        return String.join(", ", words);
    }

    private void surroundings() {
        add("clearance", panel.clearance()
                .map(c -> c + panel.clearanceTo().map(f -> " to the " + Words.of(f)).orElse("")));
        add("heat", panel.heat().map(h -> Words.of(h.from()) + h.peak().map(p -> ", up to " + p).orElse("")));
        add("holes", panel.openings().map(SurveyedPanel::holes));
        add("fixings", list(panel.fixings(), f -> times(f.count()) + Words.of(f.kind())));
        add("lining", panel.liningOnRibs().filter(on -> !panel.ribs().equals(Optional.of(List.of())))
                .map(on -> on ? "bears on the ribs" : "clear of the ribs"));
        add("wet", panel.wet().map(w -> Words.of(w) + panel.driesOut().filter(d -> w != Wetness.DRY)
                .map(d -> d ? ", dries out" : ", does not dry out").orElse("")));
        add("traffic", panel.traffic().map(Words::of));
        add("noise near", panel.nearNoise().map(Words::of));
        add("ear near", panel.nearEar().map(near -> near ? "yes" : NONE));
    }

    private static String holes(List<PanelEntry.Opening> openings) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            PanelEntry.Opening hole = openings.get(i);
            words.add(Spoken.letter(i) + " " + times(hole.count()) + Words.of(hole.kind())
                    + hole.size().map(s -> ", " + s).orElse("") + hole.state().map(s -> ", " + Words.of(s)).orElse("")
                    + (hole.mustStayOpen().orElse(false) ? ", must stay open" : ""));
        }
        return words.isEmpty() ? NONE : String.join("; ", words);
    }

    private static String times(Optional<Integer> count) {
        return count.filter(n -> n > 1).map(n -> n + " × ").orElse("");
    }

    private void work() {
        panel.reach().ifPresent(r -> entries.add("reach", Words.of(r)
                + panel.reachable().map(s -> ", " + s + " of it").orElse("")));
        add("moving", list(panel.moving(), Words::of));
        add("covers", list(panel.covers(), c -> Words.of(c.kind()) + c.size().map(SurveyedPanel::by).orElse("")));
        add("behind it", list(panel.behind(), Words::of));
        add("lid", panel.lid().map(l -> "held by its " + Words.of(l.holder())
                + l.margin().map(m -> ", which bear " + m + " more").orElse("")));
        add("lifts out", panel.liftsOut().filter(out -> out).map(out -> "yes"));
        add("missing", list(panel.missing(), Words::of));
        add("loose", list(panel.loose(), Words::of));
        add("note", panel.note());
    }

    private static String by(List<Quantity> size) {
        return ", " + size.get(0) + " × " + size.get(1);
    }

    private static <T> Optional<String> list(Optional<List<T>> all, java.util.function.Function<T, String> words) {
        return all.map(some -> some.isEmpty() ? NONE : some.stream().map(words).collect(Collectors.joining("; ")));
    }

    private void add(String label, Optional<String> words) {
        if (words.equals(Optional.of(NONE))) {
            none.add(label);
        } else {
            words.ifPresent(w -> entries.add(label, w));
        }
    }
}
