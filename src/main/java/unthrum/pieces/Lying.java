package unthrum.pieces;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.AffineTransformation;
import unthrum.cutting.Placement;

/** A piece as it lies on its sheet, mm from the sheet's lower left corner. */
public record Lying(CutPiece piece, Placement placement) {

    /** A point in mm, to the right and up. */
    public record Point(double right, double up) {
    }

    /** What is cut out of it, where it lies. */
    public record CutOut(Clearing clearing, Point middle, double width, double height) {
    }

    /** All outlines: first the outer one, then the holes. */
    public List<List<Point>> outlines() {
        var shape = (org.locationtech.jts.geom.Polygon) ontoSheet().transform((Geometry) piece.shape());
        List<List<Point>> outlines = new ArrayList<>(List.of(points(shape.getExteriorRing())));
        for (int i = 0; i < shape.getNumInteriorRing(); i++) {
            outlines.add(points(shape.getInteriorRingN(i)));
        }
        return outlines;
    }

    /** Where a label stands clear of edges, holes and lines. */
    public Point middle() {
        Geometry clear = piece.shape();
        for (Line line : piece.lines()) {
            clear = clear.difference(line.shape().buffer(1));
        }
        Coordinate middle = MaximumInscribedCircle.getCenter(ontoSheet().transform(clear), 1).getCoordinate();
        return new Point(middle.x, middle.y);
    }

    /** A line on it, where it lies. */
    public record Drawn(Line line, Point from, Point to) {
    }

    public List<Drawn> lines() {
        AffineTransformation onto = ontoSheet();
        return piece.lines().stream().map(l -> new Drawn(l, point(onto, l.fromAlong(), l.fromAcross()),
                point(onto, l.toAlong(), l.toAcross()))).toList();
    }

    private static Point point(AffineTransformation onto, double along, double across) {
        Coordinate at = onto.transform(new Coordinate(along, across), new Coordinate());
        return new Point(at.x, at.y);
    }

    public List<CutOut> cutOuts() {
        AffineTransformation onto = ontoSheet();
        return piece.clearings().stream().map(c -> {
            Point at = point(onto, c.along(), c.across());
            return placement.turned() ? new CutOut(c, at, c.length(), c.width())
                    : new CutOut(c, at, c.width(), c.length());
        }).toList();
    }

    /** From the panel to the sheet: mirrored where it must be, and turned, never flipped otherwise. */
    private AffineTransformation ontoSheet() {
        Box box = piece.box();
        AffineTransformation onto = AffineTransformation.translationInstance(-box.along(), -box.across());
        if (piece.mirrored()) {
            onto.scale(-1, 1).translate(box.length(), 0);
        }
        if (!placement.turned()) {
            onto.rotate(Math.PI / 2).translate(box.width(), 0);
        }
        double tenths = OnHand.TENTHS / 1000.0;
        return onto.translate(placement.x() / tenths, placement.y() / tenths);
    }

    private static List<Point> points(LinearRing ring) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ring.getNumPoints() - 1; i++) {
            points.add(new Point(ring.getCoordinateN(i).x, ring.getCoordinateN(i).y));
        }
        return points;
    }
}
