package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.material.Material.Cell;
import unthrum.physics.HeatLayer;
import unthrum.reading.Quantity;
import unthrum.reading.Words;
import unthrum.survey.Face;
import unthrum.survey.Wetness;
import unthrum.survey.Zone;

/**
 * The ways of heat through one panel with the trim back on, before the work and after: metal, layers, the closed air
 * behind what comes back, and that itself. Doors, lids, pillars and sills have a cavity and an inner skin behind the
 * trim; the inner skin, thin metal, resists nothing.
 *
 * <p>A bright face counts as bright only in a closed gap that stays clean and dry, less what dust takes: absorptivity
 * rises in proportion to the covered area (Noboa, The Influence of Dust on the Absorptivity of Radiant Barriers,
 * Texas A&amp;M; abstract). In a cavity, in the damp, over a floor, pressed against the lining or towards the room it
 * is as dull as paint. So is the facing of a damping sheet, rolled down and marked: damping is no insulation.
 */
public final class HeatPaths {

    private final double gauge;
    private final double skinConductivity;
    private final double dull;
    private final double dust;
    private final boolean staysBright;
    private final double space;
    private final String cover;
    private final HeatLayer coverLayer;

    private HeatPaths(Panel panel, Room room, Setting setting, Knowledge knowledge) {
        boolean hollow = hasInnerSkin(panel.zone());
        this.gauge = panel.gauge();
        this.skinConductivity = knowledge.number("usual/skin-conductivity");
        this.dull = knowledge.number("usual/dull-face");
        this.dust = knowledge.number("usual/dust-on-face");
        this.staysBright = !hollow && panel.zone() != Zone.WHEEL_ARCH && setting.wet() == Wetness.DRY
                && (room.to() == Face.TRIM || room.to() == Face.LINING);
        this.space = hollow ? Math.max(room.clearance(), knowledge.number("usual/cavity-depth")) : room.clearance();
        Face face = hollow && room.to() != Face.NOTHING && !comesBack(room.to()) ? Face.TRIM : room.to();
        this.cover = Words.of(face);
        this.coverLayer = comesBack(face) ? new HeatLayer.Known(resistance(face, knowledge)) : null;
    }

    public static HeatPaths of(Panel panel, Room room, Setting setting, Knowledge knowledge) {
        return new HeatPaths(panel, room, setting, knowledge);
    }

    /** @param materials from the metal inward */
    public HeatPath through(List<Material> materials) {
        List<String> names = new ArrayList<>(materials.size() + 3);
        List<HeatLayer> layers = new ArrayList<>(materials.size() + 3);
        add("metal", new HeatLayer.Solid(gauge, skinConductivity), names, layers);
        int sealed = 0;
        double gap = space;
        for (Material material : materials) {
            gap -= material.thickness().si();
            if (material.conductivity().isPresent()) {
                add(material.material(), new HeatLayer.Solid(material.thickness().si(),
                        material.conductivity().get().si()), names, layers);
            }
            sealed = keepsAirOut(material) ? layers.size() - 1 : sealed;
        }
        if (coverLayer != null) {
            if (gap > 0) {
                add("air gap", new HeatLayer.AirGap(gap, face(materials), dull), names, layers);
            }
            add(cover, coverLayer, names, layers);
        }
        return new HeatPath(names, layers, sealed);
    }

    /** The bare skin with nothing behind it but the room. */
    HeatPath open() {
        return new HeatPath(List.of("metal"), List.of(new HeatLayer.Solid(gauge, skinConductivity)), 0);
    }

    private static void add(String name, HeatLayer layer, List<String> names, List<HeatLayer> layers) {
        names.add(name);
        layers.add(layer);
    }

    /** How much of a black face's heat the innermost layer gives off into the gap. */
    private double face(List<Material> materials) {
        if (!staysBright || materials.isEmpty()) {
            return dull;
        }
        Material inner = materials.get(materials.size() - 1);
        double clean = inner.layer() == Layer.DAMPING ? dull : inner.emissivity().map(Quantity::si).orElse(dull);
        return clean < dull ? clean + dust * (dull - clean) : dull;
    }

    private static boolean keepsAirOut(Material material) {
        return material.bonding().sticks() && (material.cell() == Cell.CLOSED || material.cell() == Cell.SOLID);
    }

    private static boolean hasInnerSkin(Zone zone) {
        return switch (zone) {
            case DOOR, SLIDING_DOOR, REAR_DOOR, TAILGATE, BOOT_LID, PILLAR, SILL -> true;
            case ROOF, BULKHEAD, TUNNEL, FLOOR, FOOTWELL, WHEEL_ARCH, SIDE, BONNET, BOOT_FLOOR, CAB_BACK ->
                    false;
        };
    }

    private static boolean comesBack(Face face) {
        return switch (face) {
            case TRIM, LINING, CARPET, MOULDED_MAT, FLOOR_BOARD -> true;
            case DRAWER, WINDOW_GLASS, SEAT, NOTHING -> false;
        };
    }

    private static double resistance(Face face, Knowledge knowledge) {
        return switch (face) {
            case CARPET, MOULDED_MAT -> knowledge.number("usual/carpet-resistance");
            case FLOOR_BOARD -> knowledge.number("usual/board-resistance");
            default -> knowledge.number("usual/trim-resistance");
        };
    }
}
