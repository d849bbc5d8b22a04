package unthrum.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.audit.Fitted.Piece;
import unthrum.built.BuiltPanel;
import unthrum.facts.Duty;
import unthrum.facts.Duty.Work;
import unthrum.facts.Hold;
import unthrum.facts.Hold.Obstacle;
import unthrum.facts.Place;
import unthrum.facts.Question;
import unthrum.knowledge.Knowledge;
import unthrum.material.Material;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reading.Words;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.reasoning.Verdict;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;

/**
 * Holds the layers on one panel against those that the plan lays there: what is missing, what is more, what differs.
 */
final class PlanAudit {
    private final PlannedPanel planned;
    private final BuiltPanel built;
    private final Fitted fitted;
    private final Proofs proofs;
    private final double slack;
    private final double thicknessSlack;
    private final Finder finder;

    PlanAudit(PlannedPanel planned, BuiltPanel built, Fitted fitted, Proofs proofs, Knowledge knowledge,
              Finder finder) {
        this.planned = planned;
        this.built = built;
        this.fitted = fitted;
        this.proofs = proofs;
        this.slack = knowledge.number("audit/coverage-slack");
        this.thicknessSlack = knowledge.number("audit/thickness-slack");
        this.finder = finder;
    }

    void all() {
        List<Finding> breaches = List.copyOf(finder.findings());
        held();
        unknown();
        planned.layup().layers().forEach(laid -> laid.patches().forEach(patch -> wanted(laid, patch)));
        for (Piece piece : fitted.pieces()) {
            coverageSaid(piece);
            boolean judged = LayerAudit.isJudged(breaches, piece) || !finder.findings().stream()
                    .filter(f -> f.mistake() == Mistake.COVERED_BEFORE_READY).toList().isEmpty();
            if (!judged && built.differsBecause().isEmpty()) {
                unplanned(piece);
            }
        }
        if (built.differsBecause().isEmpty()) {
            built.extras().orElse(List.of()).forEach(extra -> finder.found(Severity.UNPROVEN,
                    Mistake.DIFFERS_FROM_PLAN, Place.of(planned.name()), extra, List.of()));
        }
    }

    /** Whether layers belong here at all hangs on something that nobody measured. */
    private void unknown() {
        List<Judgement> questions = planned.advice().questions();
        if (planned.verdict() == Verdict.ASK && !fitted.isEmpty()) {
            finder.found(Severity.UNPROVEN, Mistake.NOT_MEASURED, Place.of(planned.name()), facts(questions), questions);
        }
    }

    private static String facts(List<Judgement> questions) {
        return questions.stream().map(q -> ((Question) q.conclusion()).fact()).distinct()
                .collect(Collectors.joining(", "));
    }

    /** A hold is gone when the work that ends it is proven. */
    private void held() {
        List<Judgement> holds = planned.advice().holds().stream().filter(j -> !isOver((Hold) j.conclusion())).toList();
        if (!holds.isEmpty() && !fitted.isEmpty()) {
            finder.found(Weighing.harm(holds, Severity.FAULT), Mistake.COVERED_BEFORE_READY, Place.of(planned.name()),
                    "layers", Stream.concat(holds.stream(), cures(holds)).toList());
        }
    }

    /** The work on the panel that would have ended a hold. */
    private Stream<Judgement> cures(List<Judgement> holds) {
        List<Work> works = holds.stream().flatMap(j -> cure(((Hold) j.conclusion()).obstacle()).stream()).toList();
        return planned.advice().panel().own(Duty.class).stream()
                .filter(j -> works.contains(((Duty) j.conclusion()).work()));
    }

    private boolean isOver(Hold hold) {
        return cure(hold.obstacle()).stream().anyMatch(work ->
                proofs.of(work, hold.place(), planned.advice().panel().own(Hold.class)).isProven());
    }

    private static List<Work> cure(Obstacle obstacle) {
        return switch (obstacle) {
            case LIVE_RUST -> List.of(Work.CURE_RUST);
            case LEAK -> List.of(Work.REPAIR);
            case LOOSE_PAINT -> List.of(Work.REPAINT);
            case UNTESTED_PADS -> List.of(Work.TEST_OLD_LAYER);
            case FRESH_PAINT -> List.of(Work.WAIT_FOR_CURE);
            case SHIELD_MISSING -> List.of(Work.REFIT_SHIELD);
            case OUT_OF_REACH, CANNOT_BE_CLEANED, NOT_LOOKED_AT -> List.of();
        };
    }

    private void wanted(Laid laid, Patch patch) {
        List<Judgement> wants = planned.advice().wants().stream().filter(WeighedWant::stands)
                .filter(w -> w.layer() == laid.layer() && w.place().equals(patch.place()))
                .map(WeighedWant::judgement).toList();
        double covered = fitted.coverage(laid.layer(), patch.place());
        boolean there = fitted.pieces().stream().anyMatch(p -> p.layer() == laid.layer()
                && p.laid().patches().stream().anyMatch(q -> patch.place().within(q.place())));
        if (!there) {
            finder.found(Severity.FAULT, Mistake.WANTED_LAYER_MISSING, patch.place(), laid.layer().word(), wants);
        } else if (covered < patch.coverage() - slack) {
            finder.found(Severity.FAULT, Mistake.COVERS_TOO_LITTLE, patch.place(), laid.layer().word(), wants,
                    List.of(new Figure("covers", covered, Dimension.SHARE),
                            new Figure("planned", patch.coverage(), Dimension.SHARE)), List.of());
        }
    }

    private void coverageSaid(Piece piece) {
        if (piece.entry().coverage().isEmpty()) {
            finder.found(Severity.UNPROVEN, Mistake.COVERAGE_UNKNOWN, Place.of(planned.name()),
                    LayerAudit.name(piece), List.of());
        }
    }

    private void unplanned(Piece piece) {
        Laid plan = planned.layup().of(piece.layer()).orElse(null);
        if (plan != null) {
            difference(piece.laid().material(), plan.material()).ifPresent(difference -> finder.found(Severity.UNPROVEN,
                    Mistake.DIFFERS_FROM_PLAN, Place.of(planned.name()), difference, List.of()));
        }
        for (Patch patch : piece.laid().patches()) {
            boolean expected = plan != null && plan.patches().stream().anyMatch(p -> p.place().within(patch.place()));
            if (!expected) {
                notExpected(piece, patch.place());
            }
        }
    }

    /** Another material, another thickness of it, or another hold than it usually has. */
    private Optional<String> difference(Material found, Material meant) {
        if (!found.material().equals(meant.material())) {
            return Optional.of(found.material() + " in place of " + meant.material());
        }
        boolean limitBroken = finder.findings().stream().anyMatch(f -> f.mistake() == Mistake.LIMIT_BROKEN);
        if (!limitBroken && Math.abs(found.thickness().si() / meant.thickness().si() - 1) > thicknessSlack) {
            return Optional.of(found.material() + " " + found.thickness() + " thick in place of " + meant.thickness());
        }
        return found.bonding() == meant.bonding() ? Optional.empty() : Optional.of(found.material() + " "
                + Words.of(found.bonding()) + " in place of " + Words.of(meant.bonding()));
    }

    private void notExpected(Piece piece, Place place) {
        List<Judgement> wants = planned.advice().wants().stream().filter(WeighedWant::stands)
                .filter(w -> w.layer() == piece.layer() && w.place().within(place)).map(WeighedWant::judgement).toList();
        if (wants.isEmpty()) {
            finder.found(Severity.WASTE, Mistake.NOTHING_ASKS_FOR_IT, place, LayerAudit.name(piece), List.of());
        } else {
            finder.found(Severity.UNPROVEN, Mistake.DIFFERS_FROM_PLAN, place, LayerAudit.name(piece), wants);
        }
    }
}
