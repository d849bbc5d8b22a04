package unthrum.pieces;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import unthrum.facts.Place;
import unthrum.material.Material;

/**
 * A piece to be cut.
 *
 * @param number   by which it goes: '7', or '7a' and '7b' where two make one face, and '7a1' and '7a2' where 7a was cut
 *                 in two to use up what there is
 * @param face     what it covers, alone or with others
 * @param box      where on the panel; the rectangle that it is cut from
 * @param shape    its outline on the panel with its holes, mm
 * @param clearings what is cut out of it or bites into its edge
 * @param lines    slits, relief cuts and folds
 * @param relief   how its long sides are cut for metal that bulges both ways
 */
public record CutPiece(String number, Face face, Box box, Polygon shape, List<Clearing> clearings, List<Line> lines,
                       Optional<Relief> relief) {

    public CutPiece {
        clearings = List.copyOf(clearings);
        lines = List.copyOf(lines);
    }

    public Material material() {
        return face.material();
    }

    /** The panel or the bay that it lies on. */
    public Place place() {
        return face.place();
    }

    /** Whether it is cut as the mirror image, being the right one of a left and right pair. */
    public boolean mirrored() {
        return face.mirrored();
    }

    /** By which it is found on a sheet: its number and its panel. */
    public String name() {
        return number + " " + place().panel();
    }

    /** The number of one of its own parts: letters and digits take turns. */
    String partNumber(int index) {
        return number + (endsInDigit(number) ? String.valueOf((char) ('a' + index)) : String.valueOf(index + 1));
    }

    /** Whether it is the other piece or was cut from it. */
    boolean isPartOf(CutPiece other) {
        return number.equals(other.number) || number.startsWith(other.number)
                && endsInDigit(other.number) != Character.isDigit(number.charAt(other.number.length()));
    }

    private static boolean endsInDigit(String number) {
        return Character.isDigit(number.charAt(number.length() - 1));
    }

    /** Of the material itself, m². */
    public double area() {
        return shape.getArea() / 1e6;
    }

    /** Of the loose lids that come out of it, m². */
    public double lids() {
        return clearings.stream().filter(Clearing::isLid)
                .mapToDouble(c -> c.shape().intersection(box.shape()).getArea()).sum() / 1e6;
    }

    /** With its lids. */
    public double mass() {
        return (area() + lids()) * material().surfaceDensity().si();
    }

    /** Whether it is a rectangle and no more. */
    public boolean isPlain() {
        return clearings.isEmpty() && lines.stream().noneMatch(Line::isCut);
    }
}
