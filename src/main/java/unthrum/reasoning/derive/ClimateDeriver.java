package unthrum.reasoning.derive;

import java.util.ArrayList;
import java.util.List;
import unthrum.facts.Dew;
import unthrum.facts.Fact;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Sun;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.HeatDirection;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;
import unthrum.physics.SolAir;
import unthrum.survey.HeatSource;
import unthrum.survey.Zone;

/** What winter and the sun do to a bare panel. */
final class ClimateDeriver {

    private final Knowledge knowledge;
    private final Vehicle vehicle;

    ClimateDeriver(Knowledge knowledge, Vehicle vehicle) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
    }

    List<Fact> facts(Panel panel, List<Fact> known) {
        List<Fact> facts = new ArrayList<>();
        if (vehicle.livedIn()) {
            facts.add(dew(panel));
        }
        boolean sunlit = known.stream().anyMatch(f -> f instanceof Heat heat && heat.from() == HeatSource.SUN);
        if (sunlit) {
            facts.add(sun(panel));
        }
        return facts;
    }

    /** The inner face of the bare skin in the coldest air, against the dew point of the air inside. */
    private Dew dew(Panel panel) {
        HeatDirection way = panel.zone() == Zone.ROOF ? HeatDirection.UP
                : panel.zone() == Zone.FLOOR ? HeatDirection.DOWN : HeatDirection.HORIZONTAL;
        double skin = HeatFlow.through(bare(panel), way, vehicle.coldest(), vehicle.indoor()).orElseThrow().innerFace();
        return new Dew(panel.name(), skin, vehicle.dewPoint(), vehicle.dewPoint() - skin);
    }

    /** A bare skin in full sun: the level roof faces the sky, an upright side gets half the sun. */
    private Sun sun(Panel panel) {
        boolean level = panel.zone() == Zone.ROOF || panel.zone() == Zone.BONNET;
        double irradiance = knowledge.number("usual/sun") * (level ? 1 : knowledge.number("usual/upright-sun-share"));
        double solAir = SolAir.temperature(knowledge.number("usual/summer-air"), knowledge.number("usual/absorptance"),
                irradiance, level ? SolAir.LEVEL_SKY_LOSS : 0, SolAir.SUMMER_FILM);
        HeatDirection way = level ? HeatDirection.DOWN : HeatDirection.HORIZONTAL;
        HeatFlow flow = HeatFlow.through(bare(panel), way, solAir, knowledge.number("usual/summer-inside"),
                1 / SolAir.SUMMER_FILM, way.innerSurface()).orElseThrow();
        return new Sun(panel.name(), flow.faces().get(0), flow.flow());
    }

    private List<HeatLayer> bare(Panel panel) {
        return List.of(new HeatLayer.Solid(panel.gauge(), knowledge.number("usual/skin-conductivity")));
    }
}
