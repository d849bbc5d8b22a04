package unthrum.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Fixing;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.facts.ServiceCover;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.pieces.Clearing.Way;
import unthrum.reading.Quantity;
import unthrum.reasoning.Case;
import unthrum.survey.OpeningKind;
import unthrum.survey.OpeningState;
import unthrum.survey.PanelEntry;

/** What a layer on one panel is cut clear of: the rules' vetoes say which parts, the survey says where they are. */
final class Fittings {

    private final Case panel;
    private final PanelEntry entry;
    private final Layer layer;
    private final double ring;
    private final List<Clearing> clearings = new ArrayList<>();
    private final List<OnSite> onSite = new ArrayList<>();

    Fittings(Case panel, PanelEntry entry, Layer layer, Knowledge knowledge) {
        this.panel = panel;
        this.entry = entry;
        this.layer = layer;
        this.ring = knowledge.number("fixing/clear-ring");
        panel.facts().all(Fixing.class).forEach(this::fixing);
        panel.facts().all(Opening.class).forEach(this::opening);
        panel.facts().all(ServiceCover.class).forEach(this::cover);
    }

    /** Those with a place. */
    List<Clearing> clearings() {
        return clearings;
    }

    /** Those without. */
    List<OnSite> onSite() {
        return onSite;
    }

    private void fixing(Fixing fixing) {
        if (panel.isBare(fixing.place(), layer)) {
            round(fixing.place(), entry.fixings().orElseThrow().get(fixing.number() - 1).at(), fixing.count(),
                    fixing.size() + 2 * ring, Way.CLEAR);
        }
    }

    private void opening(Opening opening) {
        boolean bare = panel.isBare(opening.place(), layer);
        boolean service = opening.kind() == OpeningKind.SERVICE_OPENING;
        if (bare || service || isPassed(opening)) {
            Way way = bare ? Way.CLEAR : service ? Way.LID : Way.KEYHOLE;
            round(opening.place(), entry.openings().orElseThrow().get(opening.number() - 1).at(), opening.count(),
                    opening.size() + (way == Way.KEYHOLE ? 0 : 2 * ring), way);
        }
    }

    /** Whether a loom passes, closed in by its grommet, as the rule on keyholes has it. */
    private static boolean isPassed(Opening opening) {
        return opening.state() == OpeningState.CLOSED
                && (opening.kind() == OpeningKind.GROMMET || opening.kind() == OpeningKind.CABLE_HOLE);
    }

    private void round(Place place, Optional<List<Quantity>> at, int count, double diameter, Way way) {
        double wide = diameter * 1000;
        at.ifPresent(a -> clearings.add(new Clearing(place, mm(a.get(0)), mm(a.get(1)), wide, wide, true, way)));
        int rest = count - (at.isPresent() ? 1 : 0);
        if (rest > 0) {
            onSite.add(new OnSite(place, rest, diameter, way));
        }
    }

    /** A cut follows the edge of a cover; what is cut out lies on it as a lid, unless nothing may. */
    private void cover(ServiceCover cover) {
        PanelEntry.Cover surveyed = entry.covers().orElseThrow().get(cover.number() - 1);
        Way way = panel.isBare(cover.place(), layer) ? Way.CLEAR : Way.LID;
        if (surveyed.at().isPresent() && surveyed.size().isPresent()) {
            clearings.add(new Clearing(cover.place(), mm(surveyed.at().get().get(0)), mm(surveyed.at().get().get(1)),
                    mm(surveyed.size().get().get(0)), mm(surveyed.size().get().get(1)), false, way));
        } else {
            onSite.add(new OnSite(cover.place(), 1, Double.NaN, way));
        }
    }

    private static double mm(Quantity length) {
        return length.si() * 1000;
    }
}
