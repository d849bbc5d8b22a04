package unthrum.derive;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import unthrum.derive.BayMotions.Motion;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Rib;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Estimate;
import unthrum.survey.PanelEntry;
import unthrum.survey.Tap;

/**
 * Cuts a panel into bays and tells how each rings. Beads are springs: what lies between them and closed ribs also
 * moves as a whole, and the lower of whole and bay counts.
 */
final class BayDeriver {

    private final BayMotions motions;
    private final BeadedWholes wholes;

    BayDeriver(Knowledge knowledge, Demand demand) {
        ReadingErrors errors = ReadingErrors.of(knowledge);
        this.motions = new BayMotions(knowledge, demand, errors);
        this.wholes = new BeadedWholes(knowledge, errors);
    }

    /** A bay with the modes behind its numbers. */
    record Derived(Bay bay, BayModes modes) {
    }

    /** @param entry the panel as surveyed */
    List<Derived> bays(Panel panel, List<Rib> ribs, PanelEntry entry) {
        PanelForm form = PanelForm.of(panel, entry.shape());
        Beads beads = Beads.of(ribs, entry.ribs().orElse(List.of()));
        BayGrid grid = BayGrid.of(panel.length(), panel.width(), ribs);
        BayGrid closed = BayGrid.of(panel.length(), panel.width(), beads.walls());
        List<Derived> bays = new ArrayList<>();
        for (BayGrid.Span across : grid.alongWidth()) {
            for (BayGrid.Span along : grid.alongLength()) {
                Optional<BeadedWhole> whole = whole(panel, form, BayGrid.around(along, closed.alongLength()),
                        BayGrid.around(across, closed.alongWidth()), beads);
                bays.add(bay(panel, along, across, motions.of(panel, form, along, across), whole, bays.size(),
                        entry.tap()));
            }
        }
        return bays;
    }

    private Optional<BeadedWhole> whole(Panel panel, PanelForm form, BayGrid.Span along, BayGrid.Span across,
                                        Beads beads) {
        return wholes.of(MetalSheet.of(panel), along, across, form.part(along.length(), across.length()),
                beads.springs());
    }

    private static Derived bay(Panel panel, BayGrid.Span along, BayGrid.Span across, Motion motion,
                               Optional<BeadedWhole> whole, int index, Optional<List<Tap>> taps) {
        Estimate<Band> told = whole.map(w -> lower(motion.told(), w.told())).orElse(motion.told());
        boolean known = told.isWithin();
        Bay bay = new Bay(panel.name(), index + 1, along.length(), across.length(),
                Math.min(along.length(), across.length()), along.length() * across.length(), tap(taps, index),
                known ? told.value().lower() : Double.NaN, known ? told.value().upper() : Double.NaN,
                known ? motion.ringing().value().greatestBendingShare() : Double.NaN, motion.enough(), motion.gain(),
                motion.drive(), Double.NaN, Double.NaN, 0, assumed(panel, taps));
        return new Derived(bay, new BayModes(bay.place(), motion.shape(), motion.ringing(), told, whole));
    }

    /** What moves first of two, each told as a range. */
    private static Estimate<Band> lower(Estimate<Band> bay, Estimate<Band> whole) {
        if (!bay.isWithin() || !whole.isWithin()) {
            return bay.isWithin() ? whole : bay;
        }
        return Estimate.within(new Band(Math.min(bay.value().lower(), whole.value().lower()),
                Math.min(bay.value().upper(), whole.value().upper())));
    }

    private static Tap tap(Optional<List<Tap>> taps, int index) {
        return taps.filter(t -> !t.isEmpty())
                .map(t -> t.size() == 1 ? t.get(0) : index < t.size() ? t.get(index) : Tap.NOT_TAPPED)
                .orElse(Tap.NOT_TAPPED);
    }

    private static Set<String> assumed(Panel panel, Optional<List<Tap>> taps) {
        Set<String> assumed = new HashSet<>();
        if (taps.isEmpty()) {
            assumed.add("tap");
        }
        if (panel.assumed().contains("gauge") || panel.assumed().contains("curve") || panel.assumed().contains("rise")) {
            assumed.addAll(Set.of("lowest", "highest", "bendingShare", "gain", "drive"));
        }
        return Set.copyOf(assumed);
    }
}
