package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.effect.AimGain.DrierFaces;
import unthrum.effect.AimGain.LessHeat;
import unthrum.effect.VehicleEffect.Load;
import unthrum.survey.Aim;

@DisplayName("What layers do to the vehicle")
class VehicleEffectTest {

    private static final String PANEL = "skin: {metal: steel, gauge: 0.8 mm}, size: [1 m, 0.5 m], "
            + "shape: {curve: flat}, ribs: none, clearance to: nothing, heat: {from: sun, peak: 80 degC}}";
    private static final Workbench BENCH = Workbench.with(
            "body: hatchback, drive: petrol, use: [daily, lived in], payload left: 100 kg, coldest: -10 degC, "
                    + "indoor: {temperature: 20 degC, humidity: 50 %}",
            "road drumming, rattles, summer heat, winter cold, condensation, exhaust drone",
            "{panel: roof, zone: roof, " + PANEL, "{panel: floor, zone: floor, " + PANEL,
            "{panel: lid, zone: tailgate, lid: {holder: struts, margin: 1.5 kg}, " + PANEL,
            "{panel: bonnet, zone: bonnet, near noise: engine, " + PANEL);

    private static AimGain gain(Effects effects, Aim aim) {
        return effects.vehicle().gains().stream().filter(g -> g.aim() == aim).findFirst().orElseThrow();
    }

    @Nested
    @DisplayName("its load")
    class Loads {
        /** 0.5 m² of 4 kg/m² is 2 kg each; roof at 1.45 m, floor at 0.3 m: the centre at 0.875 m. */
        @Test
        @DisplayName("adds up in mass, height and share of the payload")
        void load() {
            Load load = BENCH.effects(BENCH.laid("roof", 1, "vinyl-barrier-2"),
                    BENCH.laid("floor", 1, "vinyl-barrier-2")).vehicle().load();
            assertThat(load.mass()).isCloseTo(4, offset(1e-9));
            assertThat(load.roof()).isCloseTo(2, offset(1e-9));
            assertThat(load.height().orElseThrow()).isCloseTo(0.875, offset(1e-9));
            assertThat(load.payload().orElseThrow()).isCloseTo(0.04, offset(1e-9));
        }

        @Test
        @DisplayName("has no height where nothing was added")
        void nothing() {
            assertThat(BENCH.effects(BENCH.bare("roof")).vehicle().load().height()).isEmpty();
        }

        @Test
        @DisplayName("makes a lid sink whose struts bear less than was laid on it")
        void lid() {
            MassEffect.LidLoad heavy = BENCH.effect(BENCH.laid("lid", 1, "vinyl-barrier-2")).mass().lid().orElseThrow();
            assertThat(heavy.left()).isCloseTo(-0.5, offset(1e-9));
            assertThat(heavy.sinks()).isTrue();
            assertThat(BENCH.effect(BENCH.laid("lid", 1, "nitrile-foam-10")).mass().lid().orElseThrow().sinks())
                    .isFalse();
            assertThat(BENCH.effect(BENCH.bare("roof")).mass().lid()).isEmpty();
        }
    }

    @Nested
    @DisplayName("its aims")
    class Aims {
        /** Three like panels give off a third each; what the treated one gives off less is a third of its own fall. */
        @Test
        @DisplayName("drumming loses a third of what the treated one of three like panels loses by itself")
        void drumming() {
            Effects three = BENCH.effects(BENCH.laid("roof", 0.5, "butyl-2"), BENCH.bare("floor"), BENCH.bare("lid"));
            Effects all = BENCH.effects(BENCH.laid("roof", 0.5, "butyl-2"), BENCH.laid("floor", 0.5, "butyl-2"),
                    BENCH.laid("lid", 0.5, "butyl-2"));
            Range one = gain(three, Aim.ROAD_DRUMMING).taken().value();
            Range every = gain(all, Aim.ROAD_DRUMMING).taken().value();
            assertThat(one.about()).isPositive().isCloseTo(every.about() / 3, offset(1e-9));
            assertThat(one.low()).isLessThan(one.about());
            assertThat(every.high()).isLessThan(1);
        }

        @Test
        @DisplayName("each panel's part is told, and the parts add up to the whole")
        void parts() {
            AimGain drumming = gain(BENCH.effects(BENCH.laid("roof", 0.5, "butyl-2"), BENCH.laid("floor", 1, "vinyl-barrier-2"),
                    BENCH.bare("lid")), Aim.ROAD_DRUMMING);
            assertThat(drumming.panels()).extracting(AimGain.PanelPart::panel).containsExactly("roof", "floor", "lid");
            assertThat(drumming.panels().stream().mapToDouble(AimGain.PanelPart::bare).sum()).isCloseTo(1, offset(1e-9));
            assertThat(drumming.panels().stream().mapToDouble(p -> p.taken().about()).sum())
                    .isCloseTo(drumming.taken().value().about(), offset(1e-12));
            assertThat(drumming.panels().get(2).taken()).isEqualTo(Range.exactly(0));
        }

        @Test
        @DisplayName("heat is the sum over the panels in watts")
        void heat() {
            Effects effects = BENCH.effects(BENCH.laid("roof", 1, "nitrile-foam-19"), BENCH.bare("floor"));
            LessHeat winter = (LessHeat) gain(effects, Aim.WINTER_COLD).gains().get(0);
            // ISO 6946: roof 214.3 → 44.9 W/m² upward; floor 30/(0.04 + 0.17) = 142.9 W/m²; 0.5 m² each
            assertThat(winter.wattsBefore()).isCloseTo(0.5 * (214.3 + 142.9), offset(0.1));
            assertThat(winter.wattsAfter()).isCloseTo(0.5 * (44.9 + 142.9), offset(0.1));
            assertThat(winter.outside()).isEmpty();
        }

        /** Common practice, no source: the engine bay, not the cabin, lies behind a bonnet. */
        @Test
        @DisplayName("a bonnet bounds no room: what is laid on it gains the cabin nothing, and without others there is no figure")
        void bonnet() {
            LessHeat without = (LessHeat) gain(BENCH.effects(BENCH.bare("roof")), Aim.SUMMER_HEAT).gains().get(0);
            LessHeat with = (LessHeat) gain(BENCH.effects(BENCH.bare("roof"), BENCH.laid("bonnet", 1, "nitrile-foam-19")),
                    Aim.SUMMER_HEAT).gains().get(0);
            assertThat(with).isEqualTo(without);
            assertThat(BENCH.effect(BENCH.laid("bonnet", 1, "nitrile-foam-19")).gains())
                    .allSatisfy(g -> assertThat(g.taken()).isEqualTo(Range.exactly(0)))
                    .allSatisfy(g -> assertThat(g.bare()).isZero());
        }

        @Test
        @DisplayName("condensation counts the area that still gets wet and names the worst panel")
        void condensation() {
            DrierFaces drier = (DrierFaces) gain(BENCH.effects(BENCH.laid("roof", 1, "nitrile-foam-19"),
                    BENCH.bare("floor")), Aim.CONDENSATION).gains().get(0);
            assertThat(drier.wetBefore()).isCloseTo(1.0, offset(1e-6));
            assertThat(drier.wetAfter()).isCloseTo(0.5, offset(1e-3));
            // roof 9.3 + 1.4 = 10.7 K below, floor −10 + 30 · 0.04/0.21 = −4.3 °C: 13.6 K below
            assertThat(drier.depthBefore()).isCloseTo((10.7 + 13.6) / 2, offset(0.1));
            assertThat(drier.depthAfter()).isCloseTo(13.6 / 2, offset(0.1));
            assertThat(drier.worstPanel()).isEqualTo("floor");
        }

        @Test
        @DisplayName("what no formula tells gets a reason and no number")
        void untold() {
            Effects effects = BENCH.effects(BENCH.bare("roof"));
            assertThat(gain(effects, Aim.RATTLES).taken().reason()).contains("by hand");
            assertThat(gain(effects, Aim.RATTLES).weight()).isZero();
        }
    }

    @Test
    @DisplayName("The next work belongs on a bare panel once the other is treated")
    void next() {
        assertThat(BENCH.effects(BENCH.laid("roof", 0.5, "butyl-2"), BENCH.bare("floor")).vehicle().next())
                .filteredOn(n -> n.aim() == Aim.ROAD_DRUMMING).singleElement().satisfies(n -> {
                    assertThat(n.panel()).isEqualTo("floor");
                    assertThat(n.treated()).isFalse();
                    assertThat(n.share()).isGreaterThan(0.5);
                });
    }
}
