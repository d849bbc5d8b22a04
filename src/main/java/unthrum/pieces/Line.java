package unthrum.pieces;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** A straight line on a piece, in mm on the panel; a cut begins at the edge of the piece. */
public record Line(Kind kind, double fromAlong, double fromAcross, double toAlong, double toAcross) {

    /** What happens along it. */
    public enum Kind {
        /** Cut open from the edge to a keyhole, and closed again round what passes. */
        SLIT,
        /** Cut open so that the piece lies down where the metal bends two ways. */
        RELIEF,
        /** Bent. */
        FOLD
    }

    public double length() {
        return Math.hypot(toAlong - fromAlong, toAcross - fromAcross);
    }

    LineString shape() {
        return Box.GEOMETRY.createLineString(new Coordinate[] {new Coordinate(fromAlong, fromAcross),
                new Coordinate(toAlong, toAcross)});
    }

    /** Whether a knife goes along it. */
    public boolean isCut() {
        return kind != Kind.FOLD;
    }

    /** Whether it runs along the panel. */
    public boolean runsAlong() {
        return Math.abs(toAlong - fromAlong) > Math.abs(toAcross - fromAcross);
    }
}
