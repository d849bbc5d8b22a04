package unthrum.plan;

import unthrum.material.Material;
import unthrum.effect.Patch;

/** A piece that the rules want but that the limits leave no room for. */
public record LeftOut(Material material, Patch patch, Scarce why) {

    /** What ran out. */
    public enum Scarce {
        MONEY, ADDED_MASS, ROOF_MASS, PAYLOAD,
        /** The panel itself takes no more, beside what serves it better. */
        PANEL
    }
}
