package unthrum.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import unthrum.audit.Fitted.Piece;
import unthrum.facts.Bay;
import unthrum.facts.Limit;
import unthrum.facts.Limit.Bound;
import unthrum.facts.Pairing;
import unthrum.facts.Place;
import unthrum.facts.Veto;
import unthrum.knowledge.Knowledge;
import unthrum.knowledge.Standing;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.PlannedPanel;
import unthrum.reading.Dimension;
import unthrum.reasoning.Case;
import unthrum.effect.Layup;
import unthrum.reasoning.Limits;
import unthrum.effect.Patch;
import unthrum.reasoning.WeighedWant;
import unthrum.reasoning.engine.Judgement;

/** Holds the layers on one panel against its vetoes, limits and pairings. */
final class LayerAudit {
    private final PlannedPanel planned;
    private final Case panel;
    private final Fitted fitted;
    private final Limits limits;
    private final double slack;
    private final Finder finder;

    LayerAudit(PlannedPanel planned, Fitted fitted, Knowledge knowledge, Finder finder) {
        this.planned = planned;
        this.panel = planned.advice().panel();
        this.fitted = fitted;
        this.limits = new Limits(panel, knowledge);
        this.slack = knowledge.number("audit/coverage-slack");
        this.finder = finder;
    }

    void all() {
        fitted.pieces().forEach(this::vetoes);
        stopsShort();
        fitted.pieces().forEach(this::material);
        layup();
        fitted.pieces().forEach(this::coverage);
    }

    /** Whether a piece is more than the plan: nothing else is said of a piece that breaks something already. */
    static boolean isJudged(List<Finding> findings, Piece piece) {
        return findings.stream().anyMatch(f -> f.what().equals(piece.laid().material().material()));
    }

    private void vetoes(Piece piece) {
        Map<Place, List<Judgement>> broken = new LinkedHashMap<>();
        for (Judgement judgement : panel.all(Veto.class)) {
            Veto veto = (Veto) judgement.conclusion();
            if (piece.layer().matches(veto.layer()) && liesOn(piece, veto)) {
                broken.computeIfAbsent(veto.place(), p -> new ArrayList<>()).add(judgement);
            }
        }
        broken.forEach((place, by) -> finder.found(Weighing.veto(piece.layer(), by), Mistake.LAYER_WHERE_NONE_MAY_BE,
                place, name(piece), by));
    }

    private boolean liesOn(Piece piece, Veto veto) {
        Place place = veto.place();
        if (place.isWholePanel()) {
            return piece.laid().patches().stream().anyMatch(p -> !isWanted(piece, p.place()));
        }
        boolean isBay = panel.facts().all(Bay.class).anyMatch(b -> b.place().equals(place));
        return isBay ? fitted.pieces().contains(piece) && !isWanted(piece, place)
                && piece.laid().patches().stream().anyMatch(p -> place.within(p.place()))
                : piece.entry().over().orElse(List.of()).contains(place.part());
    }

    /** Whether a want for the layer has prevailed over the vetoes there. */
    private boolean isWanted(Piece piece, Place place) {
        return planned.advice().wants().stream().filter(WeighedWant::stands)
                .anyMatch(w -> w.layer() == piece.layer() && w.place().equals(place));
    }

    /** A part that must stay bare, with nobody saying whether the layers stop short of it. */
    private void stopsShort() {
        Set<Judgement> unknown = new LinkedHashSet<>();
        for (Piece piece : fitted.pieces()) {
            if (piece.entry().over().isEmpty()) {
                panel.own(Veto.class).stream().filter(j -> {
                    Veto veto = (Veto) j.conclusion();
                    return isPart(veto.place()) && piece.layer().matches(veto.layer());
                }).forEach(unknown::add);
            }
        }
        if (!unknown.isEmpty()) {
            finder.found(Severity.UNPROVEN, Mistake.STOPS_SHORT_UNKNOWN, Place.of(planned.name()), "layers",
                    List.copyOf(unknown));
        }
    }

    private boolean isPart(Place place) {
        return !place.isWholePanel() && panel.facts().all(Bay.class).noneMatch(b -> b.place().equals(place));
    }

    private void material(Piece piece) {
        Material material = piece.laid().material();
        List<Judgement> broken = limits.brokenBy(material).stream().filter(j -> !isGivenUp(j, material.layer())).toList();
        byBound(broken).forEach((bound, by) -> finder.found(Weighing.limit(by), Mistake.LIMIT_BROKEN,
                Place.of(planned.name()), name(piece), by,
                LimitFigures.of(bound, material, by), List.of()));
    }

    /** A preference that the plan itself gave up for a better gain. */
    private boolean isGivenUp(Judgement limit, Layer layer) {
        return limit.standing() == Standing.PREFERENCE && planned.advice().layup().of(layer)
                .filter(laid -> limits.brokenBy(laid.material()).contains(limit)).isPresent();
    }

    private void layup() {
        Layup whole = fitted.layup();
        Set<Judgement> broken = new LinkedHashSet<>();
        double thickest = 0;
        for (Place place : panel.facts().all(Bay.class).map(Bay::place).toList()) {
            thickest = Math.max(thickest, fitted.over(place).thickness());
            limits.brokenBy(fitted.over(place)).stream().filter(j -> isStack(j)).forEach(broken::add);
        }
        limits.brokenBy(whole).stream().filter(j -> !isStack(j)).forEach(broken::add);
        List<Judgement> bounds = broken.stream().filter(j -> j.conclusion() instanceof Limit).toList();
        double stack = thickest;
        byBound(bounds).forEach((bound, by) -> finder.found(Weighing.limit(by), Mistake.LIMIT_BROKEN,
                Place.of(planned.name()), "the whole layup", by, List.of(bound == Bound.MASS
                        ? new Figure("adds", whole.mass(), Dimension.MASS)
                        : new Figure("stack of", stack, Dimension.LENGTH), LimitFigures.bound(by)), List.of()));
        broken.stream().filter(j -> j.conclusion() instanceof Pairing).forEach(this::pairing);
    }

    private static boolean isStack(Judgement judgement) {
        return judgement.conclusion() instanceof Limit limit && limit.bound() == Bound.STACK_THICKNESS;
    }

    private void pairing(Judgement judgement) {
        Pairing pairing = (Pairing) judgement.conclusion();
        Severity severity = pairing.tie() == Pairing.Tie.NEEDS ? Severity.WASTE : Severity.FAULT;
        finder.found(Weighing.harm(List.of(judgement), severity), Mistake.USELESS_ALONE, pairing.place(),
                fitted.pieces().stream().filter(p -> p.layer() == pairing.layer()).map(LayerAudit::name)
                        .findFirst().orElseThrow(), List.of(judgement));
    }

    private void coverage(Piece piece) {
        for (Patch patch : piece.laid().patches()) {
            List<Judgement> broken = limits.brokenByCovering(piece.layer(), patch.place(), patch.coverage() - slack);
            if (!broken.isEmpty() && piece.entry().coverage().isPresent()) {
                finder.found(Weighing.limit(broken), Mistake.COVERS_TOO_MUCH, patch.place(), name(piece), broken,
                        List.of(new Figure("covers", patch.coverage(), Dimension.SHARE), LimitFigures.bound(broken)),
                        List.of());
            }
        }
    }

    private static Map<Bound, List<Judgement>> byBound(List<Judgement> limits) {
        Map<Bound, List<Judgement>> map = new LinkedHashMap<>();
        limits.forEach(j -> map.computeIfAbsent(((Limit) j.conclusion()).bound(), b -> new ArrayList<>()).add(j));
        return map;
    }

    static String name(Piece piece) {
        return piece.laid().material().material();
    }
}
