package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import unthrum.facts.Dew;
import unthrum.facts.Fact;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Sun;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.HeatFlow;
import unthrum.physics.HeatLayer;
import unthrum.survey.HeatSource;

/** What winter and the sun do to a bare panel. */
final class ClimateDeriver {

    private final Knowledge knowledge;
    private final Vehicle vehicle;

    ClimateDeriver(Knowledge knowledge, Vehicle vehicle) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
    }

    List<Fact> facts(Panel panel, Heat heat) {
        List<Fact> facts = new ArrayList<>();
        if (vehicle.livedIn()) {
            facts.add(dew(panel));
        }
        if (heat.from() == HeatSource.SUN) {
            facts.add(sun(panel));
        }
        return facts;
    }

    /** The inner face of the bare skin in the coldest air, against the dew point of the air inside. */
    private Dew dew(Panel panel) {
        double skin = bare(panel, Climate.winter(panel, vehicle)).innerFace();
        return new Dew(panel.name(), skin, vehicle.dewPoint(), vehicle.dewPoint() - skin);
    }

    /** A bare skin in full sun. */
    private Sun sun(Panel panel) {
        HeatFlow flow = bare(panel, Climate.sun(panel, knowledge));
        return new Sun(panel.name(), flow.faces().get(0), flow.flow());
    }

    private HeatFlow bare(Panel panel, Climate climate) {
        return climate.through(List.of(new HeatLayer.Solid(panel.gauge(), knowledge.number("usual/skin-conductivity"))),
                OptionalDouble.empty()).orElseThrow();
    }
}
