package unthrum.audit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import unthrum.audit.Proof.Degree;
import unthrum.built.BuiltPanel;
import unthrum.built.BuiltPanel.Travel;
import unthrum.facts.Bay;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Place;
import unthrum.facts.Veto;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.plan.PanelWork;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Tap;

/** Holds the work on one panel against its duties: done and shown, said, unsaid, or known not to be done. */
final class WorkAudit {
    private static final Set<Work> TRIES_TRAVEL = EnumSet.of(Work.CHECK_TRAVEL, Work.KEEP_TRAVEL);

    private final PlannedPanel planned;
    private final BuiltPanel built;
    private final Fitted fitted;
    private final Proofs proofs;
    private final Finder finder;

    WorkAudit(PlannedPanel planned, BuiltPanel built, Fitted fitted, Proofs proofs, Finder finder) {
        this.planned = planned;
        this.built = built;
        this.fitted = fitted;
        this.proofs = proofs;
        this.finder = finder;
    }

    /** @param tapAgain the duty to tap again, with any other that the trim asks for, from the job as a whole */
    void all(List<Judgement> tapAgain, List<Judgement> refitTrim, double widestGap) {
        Map<Place, List<Judgement>> holes = new LinkedHashMap<>();
        Map<List<Evidence>, List<Judgement>> denied = new LinkedHashMap<>();
        for (Judgement duty : due()) {
            Place place = duty.conclusion().place();
            Proof proof = proofs.of(work(duty), place, List.of(duty));
            if (work(duty) == Work.CLOSE_HOLE) {
                holes.computeIfAbsent(place, p -> new ArrayList<>()).add(duty);
            } else if (proof.degree() == Degree.DENIED) {
                denied.computeIfAbsent(proof.evidence(), e -> new ArrayList<>()).add(duty);
            } else {
                judge(work(duty), place, List.of(duty));
            }
        }
        denied.forEach(this::denied);
        if (planned.verdict() != Verdict.HOLD) {
            planned.advice().closings().forEach(c -> holes.computeIfAbsent(c.opening().place(), p -> new ArrayList<>())
                    .add(c.want().judgement()));
        }
        holes.forEach((place, by) -> {
            if (!isLeftOpen(place) || by.stream().anyMatch(j -> j.standing() == Standing.SAFETY)) {
                judge(Work.CLOSE_HOLE, place, by);
            }
        });
        sealed();
        if (!tapAgain.isEmpty()) {
            taps(tapAgain);
        }
        trim(refitTrim, widestGap);
    }

    /** Whether the plan itself had to leave a hole open. */
    private boolean isLeftOpen(Place hole) {
        return planned.leftOut().stream().anyMatch(l -> l.material().layer() == Layer.SEAL
                && l.patch().place().equals(hole));
    }

    /** The duties that hold for what is fitted. A panel that still waits asks only for what safety asks. */
    List<Judgement> due() {
        boolean waits = fitted.isEmpty() && planned.advice().verdict() == Verdict.HOLD;
        return planned.advice().duties(fitted.layup()).stream()
                .filter(j -> !fitted.isEmpty() || PanelWork.standsAlone(j))
                .filter(j -> !waits || j.standing() == Standing.SAFETY).filter(j -> !isFound(j)).toList();
    }

    /**
     * Whether a finding on the layers says it already: over a part that stays bare, or over what had to be cured. What
     * a trial shows, such as a drain that does not run, is known besides.
     */
    private boolean isFound(Judgement duty) {
        return finder.findings().stream().anyMatch(f -> f.mistake() == Mistake.LAYER_WHERE_NONE_MAY_BE
                && Proofs.STOPS_SHORT.contains(work(duty))
                && f.place().equals(duty.conclusion().place()) && !f.place().isWholePanel()
                || f.mistake() == Mistake.COVERED_BEFORE_READY && f.against().contains(duty));
    }

    private static Work work(Judgement duty) {
        return ((Duty) duty.conclusion()).work();
    }

    /** One thing that the file says may speak against several duties. */
    private void denied(List<Evidence> evidence, List<Judgement> duties) {
        List<Place> places = duties.stream().map(j -> j.conclusion().place()).distinct().toList();
        boolean touches = duties.stream().anyMatch(j -> TRIES_TRAVEL.contains(work(j)))
                && built.travel().equals(Optional.of(Travel.TOUCHES));
        String what = duties.stream().map(j -> touches ? j.conclusion().place().part() : Words.of(work(j)))
                .filter(w -> !w.isEmpty()).distinct().collect(Collectors.joining(", "));
        finder.found(touches ? Severity.DANGER : Weighing.harm(duties, Severity.FAULT),
                touches ? Mistake.TOUCHES : Mistake.WORK_NOT_DONE,
                places.size() == 1 ? places.get(0) : Place.of(planned.name()), what.isEmpty() ? "what moves" : what,
                duties, List.of(), evidence);
    }

    private void judge(Work work, Place place, List<Judgement> asking) {
        Proof proof = proofs.of(work, place, asking);
        if (proof.degree() == Degree.DENIED) {
            finder.found(Weighing.harm(asking, Severity.FAULT), Mistake.WORK_NOT_DONE, place, Words.of(work), asking,
                    List.of(), proof.evidence());
        } else if (!proof.isProven()) {
            finder.found(Severity.UNPROVEN, Mistake.WORK_NOT_PROVEN, place, Words.of(work), asking, List.of(),
                    proof.evidence());
        }
    }

    /** Holes closed that must stay open. */
    private void sealed() {
        for (String part : built.closed().orElse(List.of())) {
            Place hole = new Place(planned.name(), part);
            List<Judgement> vetoes = planned.advice().panel().own(Veto.class).stream()
                    .filter(j -> (j.conclusion().place().equals(hole) || j.standing() == Standing.SAFETY
                            && hole.within(j.conclusion().place()))
                            && Layer.SEAL.matches(((Veto) j.conclusion()).layer())).toList();
            if (!vetoes.isEmpty()) {
                finder.found(Weighing.veto(Layer.SEAL, vetoes), Mistake.LAYER_WHERE_NONE_MAY_BE, hole, "a closed hole",
                        vetoes);
            }
        }
    }

    private void taps(List<Judgement> asking) {
        List<Evidence> silent = new ArrayList<>();
        for (Bay bay : planned.advice().panel().facts().all(Bay.class).toList()) {
            if (fitted.coverage(Layer.DAMPING, bay.place()) > 0) {
                Tap tap = tap(bay.number() - 1);
                if (tap == Tap.RINGS) {
                    finder.found(Severity.FAULT, Mistake.STILL_RINGS, bay.place(), "tap", asking, List.of(),
                            List.of(Evidence.of("tap after: rings")));
                } else if (tap == Tap.NOT_TAPPED) {
                    silent.add(Evidence.of(bay.place().part() + ": not tapped"));
                }
            }
        }
        if (!silent.isEmpty()) {
            finder.found(Severity.UNPROVEN, Mistake.WORK_NOT_PROVEN, Place.of(planned.name()),
                    Words.of(Work.TAP_AGAIN), asking, List.of(), silent);
        }
    }

    private Tap tap(int index) {
        List<Tap> taps = built.tapAfter().orElse(List.of());
        return taps.size() == 1 ? taps.get(0) : index < taps.size() ? taps.get(index) : Tap.NOT_TAPPED;
    }

    private void trim(List<Judgement> asking, double widestGap) {
        double gap = built.trim().flatMap(BuiltPanel.TrimBack::gap).map(g -> g.si()).orElse(0.0);
        boolean free = built.trim().map(t -> t.back() == BuiltPanel.TrimBack.Fit.FREELY).orElse(true);
        if (!free || gap > widestGap) {
            finder.found(Weighing.harm(asking, Severity.FAULT), Mistake.TRIM_STANDS_OFF, Place.of(planned.name()),
                    "trim", asking, gap <= widestGap ? List.of() : List.of(new Figure("gap", gap, Dimension.LENGTH),
                            new Figure("limit", widestGap, Dimension.LENGTH)),
                    List.of(Evidence.of("trim: " + Words.of(built.trim().orElseThrow().back()))));
        }
    }
}
