package unthrum.audit;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import unthrum.audit.Proof.Degree;
import unthrum.built.Built;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.built.BuiltPanel.Travel;
import unthrum.built.BuiltPanel.TrimBack;
import unthrum.built.Done;
import unthrum.facts.Duty.Work;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.facts.Want;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.reading.Words;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.OpeningKind;

/**
 * What the as-built file says of the work on one panel. A name and a day prove small work and what was told; what
 * stands on safety, fit or physics is shown by a photograph, a measurement, or a trial with its outcome. Photographs
 * are shown by one, and a road test by its levels before and after.
 */
final class Proofs {
    /** Work that keeps layers off a part. */
    static final Set<Work> STOPS_SHORT =
            EnumSet.of(Work.PUNCH_CLEARANCE, Work.KEEP_CLEAR, Work.CUT_ALONG_EDGE, Work.KEEP_OPEN);

    private final Built built;
    private final Optional<BuiltPanel> panel;
    private final PanelFacts facts;
    private final Fitted fitted;

    Proofs(Built built, Optional<BuiltPanel> panel, PanelFacts facts, Fitted fitted) {
        this.built = built;
        this.panel = panel;
        this.facts = facts;
        this.fitted = fitted;
    }

    /** @param asking the conclusions that ask for the work */
    Proof of(Work work, Place place, List<Judgement> asking) {
        Proof tried = tried(work, place, asking);
        if (tried.degree() == Degree.DENIED || tried.isProven()) {
            return tried;
        }
        boolean small = work == Work.TELL_OWNER || asking.stream().allMatch(j -> j.standing().compareTo(Standing.PRACTICE) >= 0);
        Stream<Proof> own = panel.flatMap(BuiltPanel::done).stream().flatMap(List::stream)
                .filter(d -> d.work().contains(work) && covers(d, place)).map(d -> proof(work, d, small));
        Stream<Proof> job = small || place.isVehicle() ? built.done().stream().flatMap(List::stream)
                .filter(d -> d.work().contains(work) && d.at().isEmpty()).map(d -> proof(work, d, small)) : Stream.empty();
        return Stream.concat(own, job).min(Comparator.comparing(p -> p.degree() == Degree.DENIED ? -1
                : p.degree().ordinal())).orElseGet(this::bareWord);
    }

    private static boolean covers(Done done, Place place) {
        return done.at().map(parts -> parts.contains(place.part())).orElse(true);
    }

    private Proof proof(Work work, Done done, boolean small) {
        Optional<String> who = done.who().or(() -> panel.flatMap(BuiltPanel::who)).or(built::who);
        Optional<LocalDate> when = done.when().or(() -> panel.flatMap(BuiltPanel::when));
        String shows = Stream.of(done.photo().map(p -> "photograph " + p), done.measured()).flatMap(Optional::stream)
                .reduce((a, b) -> a + ", " + b).map(s -> ": " + s).orElse("");
        if (!done.isStated()) {
            return new Proof(Degree.DENIED, List.of(new Evidence(Words.of(work) + ": not done", who, when)));
        }
        boolean shown = switch (work) {
            case PHOTOGRAPH -> done.photo().isPresent();
            case ROAD_TEST -> done.isShown() || built.isComparedByMeasuring();
            default -> small || done.isShown();
        };
        boolean proven = who.isPresent() && when.isPresent() && shown;
        return new Proof(proven ? Degree.PROVEN : Degree.STATED,
                List.of(new Evidence(Words.of(work) + shows, who, when)));
    }

    /** 'All done' is heard, and proves nothing. */
    private Proof bareWord() {
        boolean said = panel.flatMap(BuiltPanel::allDone).or(built::allDone).orElse(false);
        return said ? new Proof(Degree.STATED, List.of(Evidence.of("all done"))) : Proof.SILENT;
    }

    /** The outcome of a trial that belongs to the work, or a layer that lies where the work would have stopped it. */
    private Proof tried(Work work, Place place, List<Judgement> asking) {
        List<String> over = STOPS_SHORT.contains(work) ? fitted.over(place, layers(asking)) : List.of();
        if (!over.isEmpty()) {
            return new Proof(Degree.DENIED, over.stream().map(m -> Evidence.of(m + " lies over " + place.part())).toList());
        }
        return switch (work) {
            case CHECK_TRAVEL, KEEP_TRAVEL -> travel();
            case CHECK_DRAINS, CLEAR_DRAIN -> drains();
            case KEEP_OPEN, KEEP_CLEAR -> isDrain(place) ? drains() : Proof.SILENT;
            case CLOSE_HOLE -> closed(place);
            case REFIT_TRIM -> trim();
            default -> Proof.SILENT;
        };
    }

    /** The layers that the asking rules speak of; empty when they speak of any. */
    private static List<Layer> layers(List<Judgement> asking) {
        return asking.stream().flatMap(j -> j.reasons().stream()).flatMap(r -> r.bindings().values().stream())
                .filter(Want.class::isInstance).map(w -> ((Want) w).layer()).toList();
    }

    private boolean isDrain(Place place) {
        return facts.all(Opening.class).anyMatch(o -> o.place().equals(place) && o.kind() == OpeningKind.DRAIN);
    }

    private Proof travel() {
        return panel.flatMap(BuiltPanel::travel).filter(t -> t != Travel.NOT_TRIED)
                .map(t -> outcome(t == Travel.FREE, "travel: " + Words.of(t))).orElse(Proof.SILENT);
    }

    private Proof drains() {
        return panel.flatMap(BuiltPanel::drains).filter(d -> d != Drains.NOT_TRIED)
                .map(d -> outcome(d == Drains.RUN, "drains: " + Words.of(d))).orElse(Proof.SILENT);
    }

    private Proof closed(Place place) {
        return panel.flatMap(BuiltPanel::closed).map(list -> outcome(list.contains(place.part()),
                "closed: " + (list.isEmpty() ? "none" : String.join(", ", list)))).orElse(Proof.SILENT);
    }

    private Proof trim() {
        return panel.flatMap(BuiltPanel::trim).map(t -> outcome(t.back() == TrimBack.Fit.FREELY,
                "trim: " + Words.of(t.back()) + t.gap().map(g -> ", gap " + g).orElse(""))).orElse(Proof.SILENT);
    }

    private Proof outcome(boolean good, String says) {
        Optional<String> who = panel.flatMap(BuiltPanel::who).or(built::who);
        Degree degree = !good ? Degree.DENIED : who.isPresent() ? Degree.PROVEN : Degree.STATED;
        return new Proof(degree, List.of(new Evidence(says, who, panel.flatMap(BuiltPanel::when))));
    }
}
