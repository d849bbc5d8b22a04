package unthrum.pieces;

import java.util.List;
import org.locationtech.jts.geom.Polygon;
import unthrum.facts.Place;
import unthrum.material.Material;

/**
 * What one piece covers, or several that are joined.
 *
 * @param place    the panel or the bay
 * @param mirrored whether its pieces are cut as the mirror image, being on the right one of a left and right pair
 */
record Face(Material material, Place place, Ground ground, boolean mirrored) {

    /** A loose lid in it: flat, and with nothing cut out. */
    Face lid() {
        return new Face(material, place, new Ground(List.of(), List.of(), 0, ground.bearing()), mirrored);
    }

    CutPiece piece(String number, Polygon shape) {
        Box box = Box.around(shape);
        Marking marking = new Marking(shape, ground);
        return new CutPiece(number, this, box, shape, ground.clearings().stream()
                .filter(c -> c.shape().intersection(box.shape()).getArea() > 1).toList(), marking.lines(),
                marking.relief());
    }
}
