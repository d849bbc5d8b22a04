package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import unthrum.Scenarios;
import unthrum.derive.Derivation;
import unthrum.derive.PanelFacts;
import unthrum.facts.Dew;
import unthrum.facts.Vehicle;
import unthrum.physics.Estimate;
import unthrum.reading.Words;
import unthrum.survey.Face;
import unthrum.survey.Survey;
import unthrum.survey.Use;
import unthrum.survey.VehicleEntry;
import unthrum.survey.Zone;

@Label("Condensation has one account")
class DewAccountTest {

    @Example
    @Label("the rules and the effects read the same cold metal on every panel of the scenarios, were they lived in")
    void scenarios() {
        int told = 0;
        for (Path file : Scenarios.files()) {
            List<PanelFacts> bundles = new Derivation(Scenarios.KNOWLEDGE).of(livedIn(Scenarios.survey(file)));
            for (PanelFacts panel : bundles.subList(1, bundles.size())) {
                told += agrees(bundles.get(0), panel) ? 1 : 0;
            }
        }
        assertThat(told).isGreaterThan(100);
    }

    private static Survey livedIn(Survey s) {
        VehicleEntry v = s.vehicle();
        List<Use> use = new ArrayList<>(v.use());
        use.add(Use.LIVED_IN);
        return new Survey(s.survey(), new VehicleEntry(v.body(), v.drive(), use, v.year(), v.cylinders(),
                v.engineSpeed(), v.payloadLeft(), v.indoor(), v.coldest(), v.note()), s.aims(), s.limits(), s.stock(),
                s.panels());
    }

    private static boolean agrees(PanelFacts vehicle, PanelFacts panel) {
        Dew fact = panel.the(Dew.class);
        Estimate<HeatEffect.Dew> effect = new HeatEffects(Scenarios.KNOWLEDGE, vehicle.the(Vehicle.class),
                new Treated(panel, Layup.NOTHING, Set.of())).effect().dew();
        if (effect.isWithin()) {
            assertThat(effect.value().bare().coldest()).as(panel.panel()).isEqualTo(fact.skin());
            assertThat(effect.value().dewPoint()).isEqualTo(fact.dewPoint());
            assertThat(effect.value().faces().get(0).margin()).isEqualTo(-fact.below());
        }
        return effect.isWithin();
    }

    @Provide
    Arbitrary<Workbench> panels() {
        Arbitrary<Zone> zone = Arbitraries.of(Zone.class);
        Arbitrary<Face> to = Arbitraries.of(Face.class);
        Arbitrary<Integer> clearance = Arbitraries.integers().between(0, 350);
        Arbitrary<Integer> coldest = Arbitraries.integers().between(-30, 15);
        Arbitrary<Integer> humidity = Arbitraries.integers().between(20, 95);
        Arbitrary<Optional<String>> wet = Arbitraries.of("dry", "damp", "wet").optional();
        return Combinators.combine(zone, to, clearance, coldest, humidity, wet).as((z, t, c, cold, damp, w) ->
                Workbench.with("body: van, drive: diesel, use: [lived in], coldest: " + cold
                                + " degC, indoor: {temperature: 19 degC, humidity: " + damp + " %}", "condensation",
                        "{panel: p, zone: " + Words.of(z) + ", size: [1 m, 1 m], skin: {metal: steel, gauge: 0.7 mm}, "
                                + "clearance: " + c + " mm, clearance to: " + Words.of(t)
                                + w.map(s -> ", wet: " + s).orElse("") + "}"));
    }

    @Property(tries = 300)
    @Label("on any panel in any weather")
    void generated(@ForAll("panels") Workbench bench) {
        agrees(bench.panel(""), bench.panel("p"));
    }
}
