package unthrum.pieces;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Rib;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.plan.Plan;
import unthrum.plan.PlannedPanel;
import unthrum.reasoning.Case;
import unthrum.effect.Laid;
import unthrum.effect.Patch;
import unthrum.derive.BayGrid;
import unthrum.survey.PanelEntry;

/**
 * Makes pieces of a plan. A damping patch lies in the middle of its bay; every other layer covers the face between the
 * ribs that stay bare, and where only a part of the panel can be reached it ends at a straight edge. What is larger
 * than a sheet is parted; fixings, holes and covers with a place are cut out.
 */
public final class PieceMaker {

    /** A scrap of less is not worth sticking, mm². Common practice, no source. */
    private static final double SCRAP = 400;
    private static final int LETTERS = 26;

    private final Plan plan;
    private final Knowledge knowledge;
    private final List<CutPiece> pieces = new ArrayList<>();
    private final Set<OnSite> onSite = new LinkedHashSet<>();

    private final Parting parting;
    private int faces;

    private PieceMaker(Plan plan, Knowledge knowledge, Parting parting) {
        this.plan = plan;
        this.knowledge = knowledge;
        this.parting = parting;
    }

    public static Pieces of(Plan plan, Knowledge knowledge, Parting parting) {
        PieceMaker maker = new PieceMaker(plan, knowledge, parting);
        for (int i = 0; i < plan.panels().size(); i++) {
            maker.panel(plan.panels().get(i), plan.survey().panels().get(i));
        }
        return new Pieces(maker.pieces, List.copyOf(maker.onSite));
    }

    private void panel(PlannedPanel planned, PanelEntry entry) {
        boolean mirrored = Twins.isMirrored(entry, plan.survey());
        for (Laid laid : planned.layup().layers()) {
            Fittings fittings = new Fittings(planned.advice().panel(), entry, laid.layer(), knowledge);
            onSite.addAll(fittings.onSite());
            Ground ground = Ground.of(planned.advice().panel(), laid.layer(), fittings.clearings(), knowledge);
            Joints joints = new Joints(ground, parting);
            for (Patch patch : laid.patches()) {
                Face face = new Face(laid.material(), patch.place(), ground, mirrored);
                faces(planned.advice().panel(), laid, patch, joints).forEach(box -> face(joints, face, box));
            }
        }
    }

    /** One face has one number; its parts have a letter each. */
    private void face(Joints joints, Face face, Box box) {
        List<Box> parts = parts(joints, face, box);
        Face lid = face.lid();
        List<Box> lids = lids(face, box, parts).stream()
                .flatMap(l -> parts(new Joints(lid.ground(), parting), lid, l).stream()).toList();
        List<Polygon> shapes = parts.stream().flatMap(part -> cut(part, face.ground().clearings())).toList();
        int count = shapes.size() + lids.size();
        faces += count == 0 ? 0 : 1;
        for (int i = 0; i < count; i++) {
            String number = faces + (count == 1 ? "" : letters(i));
            pieces.add(i < shapes.size() ? face.piece(number, shapes.get(i))
                    : lid.piece(number, (Polygon) lids.get(i - shapes.size()).shape()));
        }
    }

    private static List<Box> parts(Joints joints, Face face, Box box) {
        return SheetSize.isJoinable(face.material()) ? joints.part(box, SheetSize.of(face.material())) : List.of(box);
    }

    /** The loose lids that come out of no part, since the face ends on both sides of their hatch. */
    private static List<Box> lids(Face face, Box box, List<Box> parts) {
        List<Box> lids = new ArrayList<>();
        for (Clearing hatch : face.ground().clearings()) {
            Geometry rest = hatch.isLid() && !hatch.round() ? hatch.shape().intersection(box.shape())
                    : Box.GEOMETRY.createPolygon();
            for (Box part : parts) {
                rest = rest.difference(part.shape());
            }
            for (int i = 0; i < rest.getNumGeometries(); i++) {
                if (rest.getGeometryN(i).getArea() > SCRAP) {
                    lids.add(Box.around(rest.getGeometryN(i)));
                }
            }
        }
        return lids;
    }

    /** a to z, then aa, ab and so on. */
    private static String letters(int index) {
        String last = String.valueOf((char) ('a' + index % LETTERS));
        return index < LETTERS ? last : letters(index / LETTERS - 1) + last;
    }

    /** What is left of a part when everything is cut out: one outline, or several where it falls apart. */
    static Stream<Polygon> cut(Box part, List<Clearing> clearings) {
        Geometry rest = part.shape();
        for (Clearing clearing : clearings) {
            rest = rest.difference(clearing.shape());
        }
        List<Polygon> shapes = new ArrayList<>();
        for (int i = 0; i < rest.getNumGeometries(); i++) {
            if (rest.getGeometryN(i) instanceof Polygon polygon && polygon.getArea() > SCRAP) {
                shapes.add(polygon);
            }
        }
        return shapes.stream();
    }

    private static List<Box> faces(Case panel, Laid laid, Patch patch, Joints joints) {
        List<Box> cells = cells(panel, laid.layer(), patch.place());
        if (laid.layer() == Layer.DAMPING) {
            SheetSize sheet = SheetSize.of(laid.material());
            return cells.stream().map(cell -> new PatchShape(cell, patch.coverage(), sheet, joints).best()).toList();
        }
        return patch.coverage() < 1 ? upToAnEdge(cells, patch.area()) : cells;
    }

    /** The bay of that place; of the whole panel what lies between the ribs that stay bare. */
    private static List<Box> cells(Case panel, Layer layer, Place place) {
        Panel whole = panel.facts().the(Panel.class);
        List<Rib> ribs = panel.facts().all(Rib.class).toList();
        int bay = panel.facts().all(Bay.class).filter(b -> b.place().equals(place)).mapToInt(Bay::number).findFirst()
                .orElse(0);
        if (bay > 0) {
            return List.of(boxes(BayGrid.of(whole.length(), whole.width(), ribs)).get(bay - 1));
        }
        return boxes(BayGrid.of(whole.length(), whole.width(),
                ribs.stream().filter(r -> panel.isBare(r.place(), layer)).toList()));
    }

    private static List<Box> boxes(BayGrid grid) {
        return grid.alongWidth().stream().flatMap(across -> grid.alongLength().stream()
                .map(along -> Box.ofMetres(along.from(), across.from(), along.length(), across.length()))).toList();
    }

    /** From the panel's start as far along it as the area goes, m². */
    private static List<Box> upToAnEdge(List<Box> cells, double area) {
        int edge = 0;
        int end = cells.stream().mapToInt(Box::alongEnd).max().orElse(0);
        while (edge < end && covered(cells, edge) < area) {
            edge++;
        }
        int at = edge;
        return cells.stream().map(c -> upTo(c, at)).filter(c -> !c.isEmpty()).toList();
    }

    private static double covered(List<Box> cells, int edge) {
        return cells.stream().map(c -> upTo(c, edge)).filter(c -> !c.isEmpty()).mapToDouble(Box::area).sum();
    }

    private static Box upTo(Box cell, int edge) {
        return new Box(cell.along(), cell.across(), Math.min(cell.length(), edge - cell.along()), cell.width());
    }
}
