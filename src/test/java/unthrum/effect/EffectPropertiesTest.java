package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

@Label("Before and after: what must hold on every panel")
class EffectPropertiesTest {

    private static final double ROUNDING = 1e-9;
    private static final List<String> FOAMS =
            List.of("nitrile-foam-6", "nitrile-foam-10", "nitrile-foam-13", "nitrile-foam-19");
    private static final List<String> BARRIERS = List.of("vinyl-barrier-1.5", "vinyl-barrier-2", "vinyl-barrier-3");

    @Provide
    Arbitrary<Workbench> benches() {
        Arbitrary<Integer> side = Arbitraries.integers().between(250, 1500);
        Arbitrary<Integer> gauge = Arbitraries.integers().between(6, 15);
        Arbitrary<String> shape = Arbitraries.of("curve: flat", "curve: crowned, rise: 6 mm", "curve: rolled, rise: 7 mm");
        Arbitrary<Integer> hole = Arbitraries.integers().between(5, 200);
        return Combinators.combine(side, side, gauge, shape, hole).as((length, width, tenths, curve, size) ->
                Workbench.with("body: van, drive: diesel, use: daily", "road drumming",
                        "{panel: p, zone: roof, skin: {metal: steel, gauge: " + tenths / 10.0 + " mm}, size: [" + length
                                + " mm, " + width + " mm], shape: {" + curve + "}, ribs: none, clearance to: nothing, "
                                + "heat: {from: sun, peak: 80 degC}, openings: [{kind: cable hole, size: " + size
                                + " mm, state: open}]}"));
    }

    @Property(tries = 40)
    @Label("more coverage never lowers the damping, at any temperature")
    void coverage(@ForAll("benches") Workbench bench, @ForAll @DoubleRange(min = 0.02, max = 1) double cover,
            @ForAll @DoubleRange(min = 0, max = 1) double less) {
        Assume.that(bay(bench, cover).response().isWithin());
        BayEffect.Response more = response(bench, cover);
        BayEffect.Response fewer = response(bench, cover * less);
        for (int i = 0; i < 3; i++) {
            Range a = fewer.at().get(i).quieter();
            Range b = more.at().get(i).quieter();
            assertThat(b.low()).isGreaterThanOrEqualTo(a.low() - ROUNDING);
            assertThat(b.about()).isGreaterThanOrEqualTo(a.about() - ROUNDING);
            assertThat(b.high()).isGreaterThanOrEqualTo(a.high() - ROUNDING);
        }
    }

    private static BayEffect.Response response(Workbench bench, double cover) {
        return bay(bench, cover).response().value();
    }

    private static BayEffect bay(Workbench bench, double cover) {
        return bench.effect(bench.laid("p", cover, "butyl-2")).bays().get(0);
    }

    @Property(tries = 40)
    @Label("closing the hole never lowers the transmission loss, and paths add up to one")
    void closing(@ForAll("benches") Workbench bench, @ForAll @IntRange(max = 2) int barrier,
            @ForAll @DoubleRange(min = 0.05, max = 1) double cover) {
        for (Blocking blocking : bench.effect(Workbench.closed(bench.laid("p", cover, BARRIERS.get(barrier))))
                .blocking()) {
            if (blocking.losses().isWithin()) {
                Blocking.Losses losses = blocking.losses().value();
                assertThat(losses.treated()).isGreaterThanOrEqualTo(losses.holesAsFound() - ROUNDING);
                assertThat(losses.holesAsFound()).isGreaterThanOrEqualTo(losses.bare() - ROUNDING);
                Blocking.Paths paths = losses.paths();
                assertThat(paths.holes() + paths.withoutBarrier() + paths.barrier())
                        .isBetween(1 - ROUNDING, 1 + ROUNDING);
            }
        }
    }

    @Property(tries = 40)
    @Label("a heavier barrier laid direct never lowers the transmission loss")
    void mass(@ForAll("benches") Workbench bench, @ForAll @IntRange(max = 1) int lighter,
            @ForAll @DoubleRange(min = 0.05, max = 1) double cover) {
        List<Blocking> light = bench.effect(bench.laid("p", cover, BARRIERS.get(lighter))).blocking();
        List<Blocking> heavy = bench.effect(bench.laid("p", cover, BARRIERS.get(lighter + 1))).blocking();
        for (int i = 0; i < light.size(); i++) {
            if (light.get(i).losses().isWithin()) {
                assertThat(heavy.get(i).losses().value().treated())
                        .isGreaterThanOrEqualTo(light.get(i).losses().value().treated() - ROUNDING);
            }
        }
    }

    /** The inner face is the inside air plus flow times a fixed surface resistance, so less flow is a cooler face. */
    @Property(tries = 40)
    @Label("thicker insulation never warms the inner face in summer nor cools it in winter")
    void insulation(@ForAll("benches") Workbench bench, @ForAll @IntRange(max = 2) int thinner,
            @ForAll @DoubleRange(min = 0.05, max = 1) double cover) {
        HeatEffect thin = bench.effect(bench.laid("p", cover, FOAMS.get(thinner))).heat();
        HeatEffect thick = bench.effect(bench.laid("p", cover, FOAMS.get(thinner + 1))).heat();
        assertThat(thick.summer().value().treated()).isLessThanOrEqualTo(thin.summer().value().treated() + ROUNDING);
        assertThat(thick.winter().value().treated()).isLessThanOrEqualTo(thin.winter().value().treated() + ROUNDING);
    }
}
