package unthrum.derive;

import java.util.ArrayList;
import java.util.List;
import unthrum.facts.Dew;
import unthrum.facts.Fact;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.facts.Sun;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.HeatFlow;
import unthrum.survey.HeatSource;

/**
 * What winter and the sun do to a bare panel with its trim back on. Where the air behind the trim is deeper than the
 * formulas hold, the skin is taken to face the open room.
 */
final class ClimateDeriver {

    private final Knowledge knowledge;
    private final Vehicle vehicle;

    ClimateDeriver(Knowledge knowledge, Vehicle vehicle) {
        this.knowledge = knowledge;
        this.vehicle = vehicle;
    }

    List<Fact> facts(Panel panel, Room room, Setting setting, Heat heat) {
        HeatPaths paths = HeatPaths.of(panel, room, setting, knowledge);
        List<Fact> facts = new ArrayList<>();
        if (vehicle.livedIn()) {
            facts.add(dew(panel, paths));
        }
        if (heat.from() == HeatSource.SUN) {
            facts.add(sun(panel, paths));
        }
        return facts;
    }

    /** The coldest face of the bare panel that room air reaches, against the dew point of that air. */
    private Dew dew(Panel panel, HeatPaths paths) {
        Climate winter = Climate.winter(panel, vehicle);
        HeatPath path = bare(paths, winter);
        double skin = path.coldest(path.in(winter).orElseThrow());
        return new Dew(panel.name(), skin, vehicle.dewPoint(), vehicle.dewPoint() - skin);
    }

    private Sun sun(Panel panel, HeatPaths paths) {
        Climate sun = Climate.sun(panel, knowledge);
        HeatFlow flow = bare(paths, sun).in(sun).orElseThrow();
        return new Sun(panel.name(), flow.faces().get(0), flow.flow());
    }

    private static HeatPath bare(HeatPaths paths, Climate climate) {
        HeatPath behindTrim = paths.through(List.of());
        return behindTrim.in(climate).isPresent() ? behindTrim : paths.open();
    }
}
