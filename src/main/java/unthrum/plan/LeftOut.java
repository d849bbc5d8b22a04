package unthrum.plan;

import unthrum.material.Material;
import unthrum.reasoning.Patch;

/** A piece that the rules want but the limits of the whole vehicle leave no room for. */
public record LeftOut(Material material, Patch patch, Scarce why) {

    /** What ran out. */
    public enum Scarce { MONEY, ADDED_MASS, ROOF_MASS, PAYLOAD }
}
