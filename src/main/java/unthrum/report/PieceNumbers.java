package unthrum.report;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import unthrum.material.Material;
import unthrum.pieces.CutPiece;
import unthrum.pieces.CutPlan;
import unthrum.pieces.MaterialCut;

/** By which numbers the pieces of a panel go on the cut drawings. */
final class PieceNumbers {

    private final CutPlan cuts;

    PieceNumbers(CutPlan cuts) {
        this.cuts = cuts;
    }

    /** Those of one material, less those that find no room. */
    List<String> of(String panel, Material material) {
        return numbers(panel, c -> c.material().equals(material));
    }

    /** 'pieces 1a, 1b and 1c' of one material; says so where none is cut. */
    String words(String panel, Material material) {
        List<String> numbers = of(panel, material);
        return numbers.isEmpty() ? "no piece of it is cut" : words(numbers);
    }

    /** All pieces of a panel, and an empty word where it gets none. */
    String words(String panel) {
        List<String> numbers = numbers(panel, c -> true);
        return numbers.isEmpty() ? "" : words(numbers);
    }

    private List<String> numbers(String panel, Predicate<MaterialCut> which) {
        return CutWords.inOrder(cuts.cuts().stream().filter(which).flatMap(PieceNumbers::placed)
                .filter(p -> p.place().panel().equals(panel))).map(CutPiece::number).toList();
    }

    private static Stream<CutPiece> placed(MaterialCut cut) {
        List<CutPiece> without = cut.unplaced();
        return cut.pieces().stream().filter(p -> !without.contains(p));
    }

    private static String words(List<String> numbers) {
        return (numbers.size() == 1 ? "piece " : "pieces ") + English.and(numbers);
    }
}
