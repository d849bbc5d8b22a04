package unthrum.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;

/**
 * Parts a face into pieces that a sheet gives: rows of whole sheets, the rest at the end, and no joint through a drain,
 * a hatch or a fixing, or on a fold, where there is another way. Past a hatch that is larger than a sheet there is
 * none: there the joint goes through its middle, away from its corners.
 */
final class Joints {

    /** A joint keeps that far from a round hole or a fold, mm. Common practice, no source. */
    static final int OFF = 20;
    /**
     * A narrower strip is not stuck by itself, nor left between a joint and a hatch, mm. Common practice, no source.
     */
    static final int LEAST = 60;
    /** Nor is a piece joined once more from parts narrower than this, mm. Common practice, no source. */
    private static final int LEAST_HALF = 100;

    private final Ground ground;
    private final Parting parting;

    /** A stretch of one side of the face that a joint keeps out of, mm. */
    private record Stretch(double from, double to, int off) {
        boolean holds(double line) {
            return line > from - off && line < to + off;
        }

        /** What a piece takes to reach past it. */
        double needs() {
            return to - from + 2 * off;
        }

        double middle() {
            return (from + to) / 2;
        }

        /** Whether a line through it keeps off its corners. */
        boolean isWellInside(double line) {
            return line >= from + off && line <= to - off;
        }
    }

    Joints(Ground ground, Parting parting) {
        this.ground = ground;
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
        for (Box strip : open(face, false)) {
            for (Box row : parted(strip, way.width(), false)) {
                open(row, true).forEach(stretch -> parts.addAll(parted(stretch, way.length(), true)));
            }
        }
        return parts;
    }

    /** What is left of a face beside holes that take its whole other side: there it ends, and no joint is needed. */
    private List<Box> open(Box face, boolean onAlong) {
        Geometry rest = face.shape();
        for (Clearing c : ground.clearings()) {
            boolean spans = c.from(!onAlong) <= (onAlong ? face.across() : face.along())
                    && c.to(!onAlong) >= (onAlong ? face.acrossEnd() : face.alongEnd());
            rest = !c.round() && spans ? rest.difference(c.shape()) : rest;
        }
        List<Box> open = new ArrayList<>();
        for (int i = 0; i < rest.getNumGeometries(); i++) {
            Box box = Box.around(rest.getGeometryN(i));
            if (!box.isEmpty()) {
                open.add(box);
            }
        }
        return open;
    }

    private List<Box> parted(Box face, int most, boolean onAlong) {
        List<Box> parts = new ArrayList<>();
        int from = onAlong ? face.along() : face.across();
        for (int end : ends(face, most, onAlong)) {
            parts.add(onAlong ? new Box(from, face.across(), end - from, face.width())
                    : new Box(face.along(), from, face.length(), end - from));
            from = end;
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
        return line(face, wanted, from + Math.min(LEAST, most / 2), most, onAlong);
    }

    private int line(Box face, int wanted, int least, int most, boolean onAlong) {
        return clear(face, wanted, least, most, onAlong).or(() -> through(face, wanted, least, onAlong)).orElse(wanted);
    }

    /** The nearest line at or before the wanted one that crosses nothing; none where a hole outreaches the sheet. */
    private Optional<Integer> clear(Box face, int wanted, int least, int most, boolean onAlong) {
        int line = wanted;
        Optional<Stretch> hit = hit(face, line, onAlong);
        while (hit.isPresent()) {
            line = (int) Math.floor(hit.get().from()) - hit.get().off();
            if (line < least || hit.get().needs() > most) {
                return Optional.empty();
            }
            hit = hit(face, line, onAlong);
        }
        return Optional.of(line);
    }

    /** As near to the middle of a hole as the sheet reaches, where nothing else lies in the way. */
    private Optional<Integer> through(Box face, int wanted, int least, boolean onAlong) {
        return stretches(face, onAlong).flatMap(hole -> Stream.of((int) Math.min(wanted, hole.middle()))
                        .filter(line -> line >= least && hole.isWellInside(line))
                        .filter(line -> stretches(face, onAlong).allMatch(s -> s.equals(hole) || !s.holds(line))))
                .max(Comparator.naturalOrder());
    }

    private Optional<Stretch> hit(Box face, int line, boolean onAlong) {
        return stretches(face, onAlong).filter(s -> s.holds(line)).findFirst();
    }

    private Stream<Stretch> stretches(Box face, boolean onAlong) {
        int from = onAlong ? face.across() : face.along();
        int to = onAlong ? face.acrossEnd() : face.alongEnd();
        return Stream.concat(ground.clearings().stream().filter(c -> c.from(!onAlong) < to && c.to(!onAlong) > from)
                        .map(c -> new Stretch(c.from(onAlong), c.to(onAlong), c.round() ? OFF : LEAST)),
                ground.folds().stream().filter(f -> f.isAcross() == onAlong).map(f -> new Stretch(f.at(), f.at(), OFF)));
    }

    /** Two halves with one joint along the shorter side, or nothing when a half would be too narrow to stick. */
    List<Box> halves(Box face) {
        boolean onAlong = face.length() >= face.width();
        int from = onAlong ? face.along() : face.across();
        int size = onAlong ? face.length() : face.width();
        int line = line(face, from + size / 2, from + LEAST_HALF, size, onAlong);
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
