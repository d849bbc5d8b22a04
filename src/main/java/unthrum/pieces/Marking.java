package unthrum.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import unthrum.pieces.Ground.Fold;
import unthrum.pieces.Line.Kind;

/** The lines on one piece: slits to keyholes, folds that it runs over, and relief cuts. */
final class Marking {

    private final Box box;
    private final Polygon shape;
    private final Ground ground;

    Marking(Polygon shape, Ground ground) {
        this.box = Box.around(shape);
        this.shape = shape;
        this.ground = ground;
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        ground.clearings().stream().filter(Clearing::isKeyhole).filter(this::isInside)
                .forEach(c -> slit(c).ifPresent(lines::add));
        folds().forEach(f -> lines.addAll(clipped(Kind.FOLD, f.isAcross()
                ? line(f.at(), box.across(), f.at(), box.acrossEnd())
                : line(box.along(), f.at(), box.alongEnd(), f.at()))));
        folds().filter(Fold::isAcross).forEach(one -> folds().filter(f -> !f.isAcross())
                .forEach(other -> crossing(one.at(), other.at()).ifPresent(lines::add)));
        relief().ifPresent(r -> lines.addAll(relief(r)));
        return lines;
    }

    Optional<Relief> relief() {
        return Relief.of(box, ground.curvature(), ground.bearing());
    }

    private boolean isInside(Clearing c) {
        return c.along() > box.along() && c.along() < box.alongEnd() && c.across() > box.across()
                && c.across() < box.acrossEnd();
    }

    private Stream<Fold> folds() {
        return ground.folds().stream().filter(f -> f.isAcross() ? f.at() > box.along() && f.at() < box.alongEnd()
                : f.at() > box.across() && f.at() < box.acrossEnd());
    }

    /** The shortest way from an edge of the piece to the rim of a keyhole, through no other hole where there is one. */
    private Optional<Line> slit(Clearing c) {
        double r = c.length() / 2;
        Comparator<LineString> whole = Comparator.comparing(way -> !shape.buffer(1e-3).covers(way));
        return Stream.of(line(box.along(), c.across(), c.along() - r, c.across()),
                        line(box.alongEnd(), c.across(), c.along() + r, c.across()),
                        line(c.along(), box.across(), c.along(), c.across() - r),
                        line(c.along(), box.acrossEnd(), c.along(), c.across() + r))
                .min(whole.thenComparingDouble(LineString::getLength))
                .flatMap(way -> clipped(Kind.SLIT, way).stream().reduce((first, last) -> last));
    }

    /** Where two folds cross the piece is cut along one of them, from the nearest edge to the corner. */
    private Optional<Line> crossing(double along, double across) {
        return Stream.of(line(box.along(), across, along, across), line(box.alongEnd(), across, along, across),
                        line(along, box.across(), along, across), line(along, box.acrossEnd(), along, across))
                .min(Comparator.comparingDouble(LineString::getLength))
                .flatMap(way -> clipped(Kind.RELIEF, way).stream().findFirst());
    }

    private List<Line> relief(Relief relief) {
        List<Line> lines = new ArrayList<>();
        boolean lengthwise = box.length() >= box.width();
        for (int i = 0; i < relief.aSide(); i++) {
            double share = (i + 0.5) / relief.aSide();
            double along = box.along() + share * box.length();
            double across = box.across() + share * box.width();
            Stream.of(lengthwise ? line(along, box.across(), along, box.across() + relief.depth())
                            : line(box.along(), across, box.along() + relief.depth(), across),
                    lengthwise ? line(along, box.acrossEnd(), along, box.acrossEnd() - relief.depth())
                            : line(box.alongEnd(), across, box.alongEnd() - relief.depth(), across))
                    .flatMap(way -> clipped(Kind.RELIEF, way).stream().limit(1)).forEach(lines::add);
        }
        return lines;
    }

    private static LineString line(double fromAlong, double fromAcross, double toAlong, double toAcross) {
        return new Line(Kind.FOLD, fromAlong, fromAcross, toAlong, toAcross).shape();
    }

    /** What of a line lies on the piece, from its beginning to its end. */
    private List<Line> clipped(Kind kind, LineString way) {
        Geometry rest = shape.intersection(way);
        Coordinate start = way.getCoordinateN(0);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rest.getNumGeometries(); i++) {
            if (rest.getGeometryN(i) instanceof LineString part && part.getLength() > 1) {
                Coordinate a = part.getCoordinateN(0);
                Coordinate b = part.getCoordinateN(part.getNumPoints() - 1);
                boolean forward = a.distance(start) <= b.distance(start);
                lines.add(forward ? new Line(kind, a.x, a.y, b.x, b.y) : new Line(kind, b.x, b.y, a.x, a.y));
            }
        }
        lines.sort(Comparator.comparingDouble(l -> start.distance(new Coordinate(l.fromAlong(), l.fromAcross()))));
        return lines;
    }
}
