package unthrum.pieces;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import unthrum.facts.Place;

/**
 * A spot that a layer keeps clear of: a hole, a fixing with the ring round it, or a service cover.
 *
 * @param place  the hole, fixing or cover
 * @param along  of its middle from the panel's start, mm
 * @param across of its middle, mm
 * @param length what is cut out along the panel, mm; of a round one its diameter
 * @param width  what is cut out across the panel, mm
 */
public record Clearing(Place place, double along, double across, double length, double width, boolean round, Way way) {

    /** How a piece is cut for it. */
    public enum Way {
        /** Cut out. */
        CLEAR,
        /** Cut out, and what comes out goes back loosely as a lid of its own. */
        LID,
        /** A hole tight round what passes through, with a slit from the edge. */
        KEYHOLE
    }

    /** Sides of a quarter circle: within 0.1 % of a circle's area. */
    private static final int QUARTER_SIDES = 24;

    public boolean isLid() {
        return way == Way.LID;
    }

    public boolean isKeyhole() {
        return way == Way.KEYHOLE;
    }

    /** Its outline on the panel, mm. */
    public Geometry shape() {
        if (round) {
            return Box.GEOMETRY.createPoint(new Coordinate(along, across)).buffer(length / 2, QUARTER_SIDES);
        }
        return Box.GEOMETRY.toGeometry(new Envelope(from(true), to(true), from(false), to(false)));
    }

    /** Where it begins and ends on a line along or across the panel. */
    double from(boolean onAlong) {
        return onAlong ? along - length / 2 : across - width / 2;
    }

    double to(boolean onAlong) {
        return onAlong ? along + length / 2 : across + width / 2;
    }
}
