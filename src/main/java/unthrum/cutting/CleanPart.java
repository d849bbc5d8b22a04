package unthrum.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A part of a sheet without defects, as edge-to-edge cuts set it free in one way of parting. */
record CleanPart(Parting parting, int left, int low, int right, int top) {

    /** Which part is cut off first. */
    enum Parting { LARGEST, BESIDE, ABOVE_OR_BELOW }

    /** Of each way to part a sheet the parts, a knife margin between them. */
    static List<CleanPart> of(Stock stock, int margin) {
        List<CleanPart> parts = new ArrayList<>();
        for (Parting parting : Parting.values()) {
            new CleanPart(parting, 0, 0, stock.width(), stock.height()).collect(stock.defects(), margin, parts);
        }
        return List.copyOf(parts);
    }

    int width() {
        return right - left;
    }

    int height() {
        return top - low;
    }

    /** How early to cut it off the whole: by its area, or first all that take the whole height or width. */
    private long worth(CleanPart whole) {
        boolean first = switch (parting) {
            case LARGEST -> false;
            case BESIDE -> height() == whole.height();
            case ABOVE_OR_BELOW -> width() == whole.width();
        };
        long area = (long) width() * height();
        return first ? area + (long) whole.width() * whole.height() : area;
    }

    private CleanPart within(int newLeft, int newLow, int newRight, int newTop) {
        return new CleanPart(parting, newLeft, newLow, newRight, newTop);
    }

    private void collect(List<Defect> defects, int margin, List<CleanPart> parts) {
        if (width() <= 0 || height() <= 0) {
            return;
        }
        Optional<Defect> touched = defects.stream().filter(d -> d.touches(left, low, right, top)).findFirst();
        if (touched.isEmpty()) {
            parts.add(this);
            return;
        }
        cuts(touched.get(), margin).stream().filter(cut -> cut.get(0).width() > 0 && cut.get(0).height() > 0)
            .max(Comparator.comparingLong(cut -> cut.get(0).worth(this)))
            .ifPresent(cut -> cut.forEach(part -> part.collect(defects, margin, parts)));
    }

    /** Each cut along a side of the defect: the part without it, and the rest. */
    private List<List<CleanPart>> cuts(Defect d, int margin) {
        return List.of(
            List.of(within(left, low, d.x(), top), within(d.x() + margin, low, right, top)),
            List.of(within(d.right(), low, right, top), within(left, low, d.right() - margin, top)),
            List.of(within(left, low, right, d.y()), within(left, d.y() + margin, right, top)),
            List.of(within(left, d.top(), right, top), within(left, low, right, d.top() - margin)));
    }
}
