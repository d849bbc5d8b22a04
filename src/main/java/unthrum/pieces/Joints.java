package unthrum.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Parts a face into pieces that a sheet gives: rows of whole sheets, the rest at the end, and no joint through a drain,
 * a hatch or a fixing where there is another way.
 */
final class Joints {

    /** A joint keeps that far from what is cut out, mm. Common practice, no source. */
    static final int OFF = 20;
    /** A narrower strip than this is not stuck by itself, mm. Common practice, no source. */
    static final int LEAST = 60;
    /** Nor is a piece joined once more from parts narrower than this, mm. Common practice, no source. */
    private static final int LEAST_HALF = 100;

    private final List<Clearing> keepOff;
    private final Parting parting;

    Joints(List<Clearing> keepOff, Parting parting) {
        this.keepOff = keepOff;
        this.parting = parting;
    }

    /** The parts, in rows; the sheet lies so that they are fewest, and then so that the smallest is largest. */
    List<Box> part(Box face, SheetSize sheet) {
        return parting.ways(sheet).stream().map(way -> rows(face, way))
                .min(Comparator.comparingInt((List<Box> parts) -> parts.size())
                        .thenComparingDouble(parts -> -smallest(parts))).orElseThrow();
    }

    private static double smallest(List<Box> parts) {
        return parts.stream().mapToDouble(Box::area).min().orElse(0);
    }

    private List<Box> rows(Box face, SheetSize way) {
        List<Box> parts = new ArrayList<>();
        int low = face.across();
        for (int high : ends(face, way.width(), false)) {
            int left = face.along();
            for (int right : ends(new Box(face.along(), low, face.length(), high - low), way.length(), true)) {
                parts.add(new Box(left, low, right - left, high - low));
                left = right;
            }
            low = high;
        }
        return parts;
    }

    /** Where the pieces end along one side of the face. */
    private List<Integer> ends(Box face, int most, boolean onAlong) {
        int end = onAlong ? face.alongEnd() : face.acrossEnd();
        int from = onAlong ? face.along() : face.across();
        List<Integer> ends = new ArrayList<>();
        while (end - from > most) {
            from = joint(face, from, end, most, onAlong);
            ends.add(from);
        }
        ends.add(end);
        return ends;
    }

    /** A whole sheet, or less where a sliver would be left or a hole lies in the way. */
    private int joint(Box face, int from, int end, int most, boolean onAlong) {
        int rest = end - from - most;
        int wanted = rest < LEAST ? end - LEAST : from + most;
        return clear(face, wanted, from + Math.min(LEAST, most / 2), onAlong).orElse(wanted);
    }

    /** The nearest line at or before the wanted one that crosses no clearing of this face. */
    private Optional<Integer> clear(Box face, int wanted, int least, boolean onAlong) {
        int line = wanted;
        Optional<Clearing> hit = hit(face, line, onAlong);
        while (hit.isPresent()) {
            line = (int) Math.floor(hit.get().from(onAlong)) - OFF;
            if (line < least) {
                return Optional.empty();
            }
            hit = hit(face, line, onAlong);
        }
        return Optional.of(line);
    }

    private Optional<Clearing> hit(Box face, int line, boolean onAlong) {
        int from = onAlong ? face.across() : face.along();
        int to = onAlong ? face.acrossEnd() : face.alongEnd();
        return keepOff.stream().filter(c -> c.from(!onAlong) < to && c.to(!onAlong) > from)
                .filter(c -> line > c.from(onAlong) - OFF && line < c.to(onAlong) + OFF).findFirst();
    }

    /** Two halves with one joint along the shorter side, or nothing when a half would be too narrow to stick. */
    List<Box> halves(Box face) {
        boolean onAlong = face.length() >= face.width();
        int from = onAlong ? face.along() : face.across();
        int size = onAlong ? face.length() : face.width();
        int line = clear(face, from + size / 2, from + LEAST_HALF, onAlong).orElse(from + size / 2);
        if (Math.min(line - from, from + size - line) < LEAST_HALF) {
            return List.of();
        }
        return onAlong
                ? List.of(new Box(face.along(), face.across(), line - from, face.width()),
                        new Box(line, face.across(), from + size - line, face.width()))
                : List.of(new Box(face.along(), face.across(), face.length(), line - from),
                        new Box(face.along(), line, face.length(), from + size - line));
    }
}
