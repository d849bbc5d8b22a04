package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.facts.Bay;
import unthrum.facts.Opening;
import unthrum.facts.Place;
import unthrum.survey.Aim;

@DisplayName("The one account of what layups gain")
class AccountTest {

    private static final String FLAT = "skin: {metal: steel, gauge: 0.8 mm}, size: [1 m, 0.6 m], shape: {curve: flat}, "
            + "ribs: none, tap: rings, clearance: 40 mm, clearance to: carpet, heat: {from: sun, peak: 60 degC}";
    private static final Workbench BENCH = Workbench.with(
            "body: van, drive: diesel, use: [daily, lived in], payload left: 400 kg, coldest: -10 degC, "
                    + "indoor: {temperature: 20 degC, humidity: 50 %}",
            "road drumming, engine noise, rattles, winter cold",
            "{panel: floor, zone: floor, near noise: tyres, openings: [{kind: cable hole, size: 40 mm, state: open}], "
                    + FLAT + "}",
            "{panel: bulkhead, zone: bulkhead, near noise: engine, " + FLAT + "}",
            "{panel: pillar, zone: pillar, near ear: yes, " + FLAT + "}",
            "{panel: bonnet, zone: bonnet, near noise: engine, " + FLAT + "}");
    private static final VehicleAccount ACCOUNT = BENCH.account();

    private static PanelAccount panel(String name) {
        return ACCOUNT.panel(BENCH.panel(name), Set.of());
    }

    private static Layup laid(String panel, double share, String... materials) {
        return BENCH.laid(panel, share, materials).layup();
    }

    @Test
    @DisplayName("counts the first told aim one, the second a half, the fourth a quarter, all together one")
    void weights() {
        assertThat(ACCOUNT.weights().keySet()).containsExactly(Aim.ROAD_DRUMMING, Aim.ENGINE_NOISE, Aim.WINTER_COLD);
        assertThat(ACCOUNT.weights().values().stream().mapToDouble(w -> w).sum()).isCloseTo(1, offset(1e-12));
        assertThat(ACCOUNT.weights().get(Aim.ROAD_DRUMMING)).isCloseTo(1 / 1.75, offset(1e-12));
        assertThat(ACCOUNT.weights().get(Aim.WINTER_COLD)).isCloseTo(0.25 / 1.75, offset(1e-12));
    }

    @Test
    @DisplayName("the bare panels' parts add up to all that the bare vehicle gives off")
    void bare() {
        assertThat(List.of("floor", "bulkhead", "pillar").stream().mapToDouble(p -> panel(p).bare()).sum())
                .isCloseTo(1, offset(1e-9));
        assertThat(panel("bonnet").bare()).isZero();
        assertThat(panel("bonnet").gain(laid("bonnet", 1, "vinyl-barrier-2"))).isZero();
    }

    @Nested
    @DisplayName("A layup's gain")
    class Gains {
        @Test
        @DisplayName("is the sum of its aims' gains, each by its weight")
        void sum() {
            Layup layup = laid("floor", 1, "nitrile-foam-10", "vinyl-barrier-2");
            double sum = panel("floor").gains(layup).stream()
                    .mapToDouble(g -> ACCOUNT.weights().get(g.aim()) * g.taken().about()).sum();
            assertThat(panel("floor").gain(layup)).isCloseTo(sum, offset(1e-12)).isNotZero();
        }

        @Test
        @DisplayName("adds up over the bays that damping lies on, whatever covers it")
        void bays() {
            PanelAccount floor = panel("floor");
            Bay bay = BENCH.panel("floor").all(Bay.class).findFirst().orElseThrow();
            for (Layup cover : List.of(Layup.NOTHING, laid("floor", 1, "vinyl-barrier-2"))) {
                Layup both = new Layup(java.util.stream.Stream.concat(laid("floor", 0.5, "butyl-2").layers().stream(),
                        cover.layers().stream()).toList());
                assertThat(floor.gain(both)).isCloseTo(floor.gain(cover)
                        + floor.under(cover).damping(Workbench.material("butyl-2"), bay, 0.5), offset(1e-12));
            }
        }

        @Test
        @DisplayName("of a ring beside an ear counts as many times more as the ear is nearer")
        void ear() {
            double ratio = panel("pillar").shaken(BENCH.panel("pillar").all(Bay.class).findFirst().orElseThrow())
                    / panel("bulkhead").shaken(BENCH.panel("bulkhead").all(Bay.class).findFirst().orElseThrow());
            assertThat(10 * Math.log10(ratio))
                    .isCloseTo(Workbench.KNOWLEDGE.number("worth/near-ear"), offset(1e-9));
        }

        @Test
        @DisplayName("of closing a hole adds to that of what is laid over it")
        void hole() {
            Place hole = BENCH.panel("floor").all(Opening.class).findFirst().orElseThrow().place();
            PanelAccount closed = ACCOUNT.panel(BENCH.panel("floor"), Set.of(hole));
            assertThat(closed.closing(hole)).isPositive().isCloseTo(closed.closing(), offset(1e-12));
            Layup barrier = laid("floor", 1, "vinyl-barrier-3");
            assertThat(closed.gain(barrier)).isGreaterThan(panel("floor").gain(barrier));
        }

        @Test
        @DisplayName("lies inside its own range, and the range is wider the less the bare metal loses by itself")
        void range() {
            Range taken = panel("pillar").gains(laid("pillar", 0.5, "butyl-2")).get(0).taken();
            assertThat(taken.low()).isPositive().isLessThan(taken.about());
            assertThat(taken.high()).isGreaterThan(taken.about());
        }
    }
}
