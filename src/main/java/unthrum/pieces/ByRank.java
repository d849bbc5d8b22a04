package unthrum.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import unthrum.facts.Place;
import unthrum.material.Layer;
import unthrum.plan.Shares.Ranked;

/**
 * Leaves out by the plan's ranking what finds no room: whole faces, the last in rank first, until all others fit; what
 * room is left then goes to those left out, the first in rank first.
 */
final class ByRank {

    private final MaterialCutter cutter;
    private final int bought;
    /** What each place gets, by rank. */
    private final List<List<CutPiece>> faces;

    ByRank(List<Ranked> ranking, MaterialCutter cutter, List<CutPiece> pieces, int bought) {
        this.cutter = cutter;
        this.bought = bought;
        Map<Place, List<CutPiece>> byPlace = pieces.stream()
                .collect(Collectors.groupingBy(CutPiece::place, LinkedHashMap::new, Collectors.toList()));
        this.faces = byPlace.values().stream().sorted(Comparator.comparingInt(f -> rank(ranking, f.get(0)))).toList();
    }

    /** What the ranking does not name comes last. */
    private static int rank(List<Ranked> ranking, CutPiece piece) {
        for (int i = 0; i < ranking.size(); i++) {
            Ranked r = ranking.get(i);
            if (r.place().equals(piece.place()) && r.has(piece.material().layer())) {
                return i;
            }
        }
        return ranking.size();
    }

    /** @param tight the best layout that knows no ranks */
    MaterialCut cut(MaterialCut tight) {
        int kept = faces.size();
        MaterialCut cut = tight;
        double tooMuch = tight.unplacedArea();
        while (kept > 0 && !cut.unplaced().isEmpty()) {
            kept--;
            tooMuch -= area(faces.get(kept));
            if (tooMuch <= 0) {
                cut = cutter.cut(flat(faces.subList(0, kept)), bought);
            }
        }
        List<CutPiece> without = new ArrayList<>();
        for (List<CutPiece> face : faces.subList(kept, faces.size())) {
            MaterialCut wider = cutter.cut(Stream.concat(cut.pieces().stream(), face.stream()).toList(), bought);
            boolean isGain = wider.area() > cut.area() + 1e-9 && wider.unplaced().stream()
                    .allMatch(p -> face.get(0).material().layer() == Layer.DAMPING && p.place().equals(face.get(0).place()));
            if (isGain) {
                without.addAll(wider.unplaced());
                cut = wider.placedOnly();
            } else {
                without.addAll(face);
            }
        }
        return cut.and(without);
    }

    private static double area(List<CutPiece> face) {
        return face.stream().mapToDouble(p -> p.area() + p.lids()).sum();
    }

    private static List<CutPiece> flat(List<List<CutPiece>> faces) {
        return faces.stream().flatMap(List::stream).toList();
    }
}
