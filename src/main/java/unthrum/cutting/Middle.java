package unthrum.cutting;

/** The middle of a rectangle, its coordinates doubled so that they are whole. */
record Middle(int across, int along) {

    static Middle of(int left, int low, int width, int height) {
        return new Middle(2 * left + width, 2 * low + height);
    }

    /** Twice the distance along the sides. */
    long distanceTo(Placed p) {
        return Math.abs((long) across - p.x() - p.right()) + Math.abs((long) along - p.y() - p.top());
    }
}
