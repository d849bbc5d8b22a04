package unthrum.derive;

import unthrum.facts.Panel;
import unthrum.physics.Sheet;
import unthrum.survey.Metal;

/** The skin of a panel as physics sees it. */
public final class MetalSheet {

    private MetalSheet() {
    }

    public static Sheet of(Panel panel) {
        return panel.metal() == Metal.STEEL ? Sheet.steel(panel.gauge()) : Sheet.aluminium(panel.gauge());
    }
}
