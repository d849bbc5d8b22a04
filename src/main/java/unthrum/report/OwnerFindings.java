package unthrum.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.audit.Audit;
import unthrum.audit.Finding;
import unthrum.audit.Mistake;
import unthrum.audit.Severity;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Drains;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Limit;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.reading.Words;

/** What an audit found, told to the owner: what is wrong and what the workshop owes, without the trade's words. */
final class OwnerFindings {

    private final Audit audit;
    private final Sentences sentences = new Sentences(PlaceNames.anywhere());

    OwnerFindings(Audit audit) {
        this.audit = audit;
    }

    /** A line for each thing that is wrong, with all places where it is; dangers say so. */
    List<String> lines(Predicate<Finding> which) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        audit.findings().stream().filter(which).forEach(f -> says(f).forEach(says -> places
                .computeIfAbsent(says, s -> new ArrayList<>()).add(place(f))));
        return places.entrySet().stream().map(e -> English.sentence(English.capital(
                English.andNumbered(e.getValue().stream().distinct().toList())) + ": " + e.getKey())).toList();
    }

    private String place(Finding finding) {
        Place place = finding.place();
        return place.isVehicle() ? "the vehicle as a whole" : sentences.place(place);
    }

    private List<String> says(Finding f) {
        String danger = f.severity() == Severity.DANGER ? "danger, do not drive: " : "";
        return switch (f.mistake()) {
            case WORK_NOT_DONE -> tried(f).map(List::of)
                    .orElseGet(() -> works(f).map(w -> w + " was left undone").toList())
                    .stream().map(says -> danger + says).toList();
            case WORK_NOT_PROVEN -> works(f).map(w -> "nothing shows yet that " + w + " was done").toList();
            case LIMIT_BROKEN -> bounds(f).map(bound -> danger + layer(f) + " " + bound).toList();
            default -> List.of(danger + says(f.mistake(), f));
        };
    }

    private String says(Mistake mistake, Finding f) {
        return switch (mistake) {
            case LAYER_WHERE_NONE_MAY_BE -> f.severity() == Severity.WASTE ? layer(f) + " does nothing there"
                    : layer(f) + " lies where nothing may lie, and must " + (f.place().isWholePanel() ? "come off" : "be cut back");
            case STOPS_SHORT_UNKNOWN -> "nobody has written down whether bolts, clips and drains were left free";
            case COVERS_TOO_MUCH -> "more is covered than brings anything, which does no harm";
            case USELESS_ALONE -> layer(f) + " needs another layer with it, and that one is missing";
            case COVERED_BEFORE_READY -> "it was covered before what waited under it was put right ("
                    + English.and(obstacles(f)) + "), and must be opened again";
            case TOUCHES -> "something that moves touches what was fitted (" + f.what() + "), so do not drive before it is cut back";
            case NOT_MEASURED -> "something that decides was never looked for or measured (" + f.what() + ")";
            case WANTED_LAYER_MISSING -> "still without what was planned, " + planned(f);
            case COVERS_TOO_LITTLE -> "covered less than was planned with " + planned(f);
            case COVERAGE_UNKNOWN -> "nobody has written down how much of it is covered";
            case NOTHING_ASKS_FOR_IT -> layer(f) + " lies there though nothing asks for it";
            case DIFFERS_FROM_PLAN -> "it was done otherwise than planned, and nobody wrote why";
            case NOT_FINISHED -> "the workshop has not written down yet that the work is finished";
            case NOT_RECORDED -> "nobody has written down what was fitted there";
            case STILL_RINGS -> "it still rings when tapped, so the treatment does not work there yet";
            case TRIM_STANDS_OFF -> "the trim does not sit as it did before";
            case OVER_THE_JOBS_LIMIT -> "it got heavier than was agreed or than it may be";
            case OVERRULE_WITHOUT_REASON -> "the workshop set a rule of its trade aside and did not write why";
            case OVERRULE_NOT_ALLOWED -> "the workshop set a rule aside that may not be set aside";
            case OVERRULE_POINTLESS -> "a decision was written down that no longer belongs to what is there";
            case SIGN_OFF_STALE -> "something was changed after the job was signed off, so nobody has signed for it";
            case WORK_NOT_DONE, WORK_NOT_PROVEN, LIMIT_BROKEN -> throw new IllegalStateException("told by its parts");
        };
    }

    /** The layer by what it is for; a finding on all layers together names no single one. */
    private String layer(Finding f) {
        return audit.panels().stream().filter(p -> p.name().equals(f.place().panel()))
                .flatMap(p -> p.fitted().layers().stream()).filter(l -> l.material().material().equals(f.what()))
                .map(OwnerWords::layer).findFirst()
                .orElse(f.mistake() == Mistake.LIMIT_BROKEN ? "what was fitted" : f.what());
    }

    /** The outcome of a trial speaks for all the work that it tries. */
    private Optional<String> tried(Finding f) {
        Optional<BuiltPanel> panel = audit.built().panel(f.place().panel());
        Set<Work> works = conclusions(f, Duty.class).map(Duty::work).collect(Collectors.toSet());
        if (works.contains(Work.CHECK_DRAINS)
                && panel.flatMap(BuiltPanel::drains).equals(Optional.of(Drains.BLOCKED))) {
            return Optional.of("water does not run out of the drains");
        }
        return Optional.empty();
    }

    /** A missing layer is named by its kind. */
    private static String planned(Finding f) {
        return Arrays.stream(Layer.values()).filter(l -> l.word().equals(f.what())).map(OwnerWords::purpose).findFirst()
                .orElse(f.what());
    }

    /** A hole is closed for the sake of a want too, where no rule names the work. */
    private static Stream<String> works(Finding f) {
        List<String> works = conclusions(f, Duty.class).map(d -> OwnerWork.of(d.work())).distinct().toList();
        return works.isEmpty() ? Stream.of(OwnerWork.of(Work.CLOSE_HOLE)) : works.stream();
    }

    private static Stream<String> bounds(Finding f) {
        return conclusions(f, Limit.class).map(l -> bound(l.bound())).distinct();
    }

    private static String bound(Limit.Bound bound) {
        return switch (bound) {
            case STACK_THICKNESS, LAYER_THICKNESS -> "is too thick for the room there is";
            case SERVICE_TEMPERATURE -> "does not bear the heat of the place";
            case SERVICE_COLD -> "does not bear the cold of the place";
            case MASS, LIGHT_ENOUGH -> "is too heavy for the place";
            case HEAVY_ENOUGH -> "is too light to hold back noise";
            case COVERAGE -> "covers more than brings anything";
            case BURN_RATE -> "has no proof that it burns slowly enough";
            case CLOSED_CELL -> "soaks up water, and the place gets wet";
            case LIFTS_OUT, NOT_BONDED -> "is stuck down where it has to come off again";
            case HELD -> "hangs there with nothing to hold it";
            case BEARS_WEAR -> "will tear under feet and loads";
            case PLAIN_FACE -> "has a hard face that nobody needs there";
            case BRIGHT_FACE -> "lacks the bright face that would keep heat out";
        };
    }

    private static List<String> obstacles(Finding f) {
        return conclusions(f, Hold.class).map(h -> Words.of(h.obstacle())).distinct().toList();
    }

    private static <C extends Conclusion> Stream<C> conclusions(Finding f, Class<C> kind) {
        return f.against().stream().map(j -> j.conclusion()).filter(kind::isInstance).map(kind::cast);
    }
}
