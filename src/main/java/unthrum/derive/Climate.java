package unthrum.derive;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.HeatDirection;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;
import unthrum.physics.SolAir;
import unthrum.survey.Zone;

/**
 * What lies on both sides of a panel at its worst.
 *
 * @param outside      °C, in sun the sol-air temperature
 * @param inside       °C
 * @param outerSurface resistance, m²K/W
 */
public record Climate(HeatDirection way, double outside, double inside, double outerSurface) {

    /** The coldest air that the vehicle is used in, against the air that people keep inside. */
    public static Climate winter(Panel panel, Vehicle vehicle) {
        HeatDirection way = panel.zone() == Zone.ROOF ? HeatDirection.UP
                : panel.zone() == Zone.FLOOR ? HeatDirection.DOWN : HeatDirection.HORIZONTAL;
        return new Climate(way, vehicle.coldest(), vehicle.indoor(), HeatDirection.OUTER_SURFACE);
    }

    /** Full sun: the level roof faces the sky, an upright side gets part of the sun. */
    public static Climate sun(Panel panel, Knowledge knowledge) {
        boolean level = panel.zone() == Zone.ROOF || panel.zone() == Zone.BONNET;
        double irradiance = knowledge.number("usual/sun") * (level ? 1 : knowledge.number("usual/upright-sun-share"));
        double solAir = SolAir.temperature(knowledge.number("usual/summer-air"), knowledge.number("usual/absorptance"),
                irradiance, level ? SolAir.LEVEL_SKY_LOSS : 0, SolAir.SUMMER_FILM);
        return new Climate(level ? HeatDirection.DOWN : HeatDirection.HORIZONTAL, solAir,
                knowledge.number("usual/summer-inside"), 1 / SolAir.SUMMER_FILM);
    }

    /** Metal held at a temperature by whatever heats it from behind. */
    public static Climate hotMetal(Panel panel, double metal, double inside) {
        HeatDirection way = switch (panel.zone()) {
            case ROOF, BONNET -> HeatDirection.DOWN;
            case FLOOR, FOOTWELL, TUNNEL, BOOT_FLOOR -> HeatDirection.UP;
            default -> HeatDirection.HORIZONTAL;
        };
        return new Climate(way, metal, inside, 0);
    }

    /** Heat through layers from the outside inward; nothing where a gap is deeper than the formulas hold. */
    public Optional<HeatFlow> through(List<HeatLayer> layers) {
        return HeatFlow.through(layers, way, outside, inside, outerSurface, way.innerSurface());
    }
}
