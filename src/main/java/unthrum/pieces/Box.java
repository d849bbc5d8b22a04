package unthrum.pieces;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** A rectangle on a panel in whole millimetres, from the panel's start along it and across it. */
public record Box(int along, int across, int length, int width) {

    static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** What only binary fractions add, mm. */
    private static final double TINY = 1e-6;

    /** The nearest box of whole millimetres; lengths in m. */
    static Box ofMetres(double along, double across, double length, double width) {
        int left = millimetres(along);
        int low = millimetres(across);
        return new Box(left, low, millimetres(along + length) - left, millimetres(across + width) - low);
    }

    /** The smallest box around a shape. */
    static Box around(Geometry shape) {
        Envelope e = shape.getEnvelopeInternal();
        int left = (int) Math.floor(e.getMinX() + TINY);
        int low = (int) Math.floor(e.getMinY() + TINY);
        int right = (int) Math.ceil(e.getMaxX() - TINY);
        int high = (int) Math.ceil(e.getMaxY() - TINY);
        return new Box(left, low, right - left, high - low);
    }

    static int millimetres(double metres) {
        return (int) Math.round(metres * 1000);
    }

    public int alongEnd() {
        return along + length;
    }

    public int acrossEnd() {
        return across + width;
    }

    /** In m². */
    public double area() {
        return (double) length * width / 1e6;
    }

    boolean isEmpty() {
        return length <= 0 || width <= 0;
    }

    Geometry shape() {
        return GEOMETRY.toGeometry(new Envelope(along, alongEnd(), across, acrossEnd()));
    }

    /** How long the edge is along which two boxes butt, mm; 0 when they do not. */
    int jointWith(Box other) {
        boolean beside = alongEnd() == other.along || other.alongEnd() == along;
        boolean above = acrossEnd() == other.across || other.acrossEnd() == across;
        int sharedAcross = Math.min(acrossEnd(), other.acrossEnd()) - Math.max(across, other.across);
        int sharedAlong = Math.min(alongEnd(), other.alongEnd()) - Math.max(along, other.along);
        return beside && sharedAcross > 0 ? sharedAcross : above && sharedAlong > 0 ? sharedAlong : 0;
    }
}
