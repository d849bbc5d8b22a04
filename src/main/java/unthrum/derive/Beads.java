package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import unthrum.derive.BeadedWholes.Surveyed;
import unthrum.facts.Rib;
import unthrum.reading.Quantity;
import unthrum.survey.PanelEntry;
import unthrum.survey.RibKind;

/**
 * The ribs of a panel by what they do to it.
 *
 * @param springs beads that bend with the panel
 * @param walls ribs that do not, and hold what lies between them
 */
record Beads(List<Surveyed> springs, List<Rib> walls) {

    /** @param entries the same ribs as surveyed, in the same order */
    static Beads of(List<Rib> ribs, List<PanelEntry.Rib> entries) {
        List<Surveyed> springs = new ArrayList<>();
        List<Rib> walls = new ArrayList<>();
        for (int i = 0; i < ribs.size(); i++) {
            Rib rib = ribs.get(i);
            PanelEntry.Rib entry = entries.get(i);
            OptionalDouble height = number(entry.height());
            if (rib.kind() == RibKind.BEAD && BeadedWholes.isSpring(rib.breadth(), height)) {
                springs.add(new Surveyed(rib.runs(), rib.at(), rib.breadth(), height, entry.section(),
                        number(entry.stopsShort())));
            } else {
                walls.add(rib);
            }
        }
        return new Beads(springs, walls);
    }

    private static OptionalDouble number(Optional<Quantity> quantity) {
        return quantity.map(q -> OptionalDouble.of(q.si())).orElse(OptionalDouble.empty());
    }
}
