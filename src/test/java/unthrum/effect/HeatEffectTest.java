package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.effect.HeatEffect.Dew;
import unthrum.effect.HeatEffect.Face;
import unthrum.effect.HeatEffect.Heated;

@DisplayName("What layers do against heat, cold and water")
class HeatEffectTest {

    private static final Workbench BENCH = Workbench.with(
            "body: van, drive: diesel, use: [lived in], coldest: -10 degC, "
                    + "indoor: {temperature: 20 degC, humidity: 50 %}",
            "summer heat, winter cold, condensation",
            panel("open-roof", "roof", "from: sun, peak: 80 degC", "clearance to: nothing"),
            panel("lined-roof", "roof", "from: sun, peak: 80 degC", "clearance: 30 mm, clearance to: lining, wet: dry"),
            panel("damp-roof", "roof", "from: sun, peak: 80 degC", "clearance: 30 mm, clearance to: lining, wet: damp"),
            panel("tight-roof", "roof", "from: sun, peak: 80 degC", "clearance: 10 mm, clearance to: lining, wet: dry"),
            panel("door", "door", "from: none, peak: 60 degC", "clearance: 20 mm, clearance to: window glass, wet: dry"),
            panel("deep-roof", "roof", "from: sun, peak: 80 degC", "clearance: 400 mm, clearance to: lining"),
            panel("cool-side", "side", "from: none, peak: 60 degC", "clearance to: nothing"),
            panel("hot-floor", "floor", "from: exhaust, peak: 110 degC", "clearance to: nothing"));

    private static String panel(String name, String zone, String heat, String more) {
        return "{panel: " + name + ", zone: " + zone + ", skin: {metal: steel, gauge: 0.8 mm}, size: [1 m, 2 m], "
                + "shape: {curve: flat}, ribs: none, heat: {" + heat + "}, " + more + "}";
    }

    private static HeatEffect heat(Treated treated) {
        return BENCH.effect(treated).heat();
    }

    @Nested
    @DisplayName("the heat that flows")
    class Flow {
        /**
         * ISO 6946, heat upward, Rsi 0.10 and Rse 0.04: bare 30 K/0.14 = 214 W/m²; with 19 mm of foam at
         * 0.036 W/mK, R = 0.528, 30 K/0.668 = 44.9 W/m².
         */
        @Test
        @DisplayName("in winter is that of ISO 6946 worked by hand")
        void winter() {
            HeatEffect.Flow flow = heat(BENCH.laid("open-roof", 1, "nitrile-foam-19")).winter().value();
            assertThat(flow.bare()).isCloseTo(214.3, within(0.1));
            assertThat(flow.treated()).isCloseTo(44.9, within(0.1));
            assertThat(flow.wattsTreated()).isCloseTo(89.9, within(0.2));
            // bare, by hand: √((0.5 · 0.04)² + (0.2 · 0.10)²)/0.14 = 0.202; foamed √(0.0283² + (0.2 · 0.528)²)/0.668 = 0.164
            assertThat(flow.uncertainty()).isCloseTo(0.202, within(0.001));
        }

        /** Half at 214.3 and half at 44.9 W/m² side by side. */
        @Test
        @DisplayName("runs past the layers where half stays bare")
        void half() {
            assertThat(heat(BENCH.laid("open-roof", 0.5, "nitrile-foam-19")).winter().value().treated())
                    .isCloseTo(129.6, within(0.1));
        }

        /**
         * Sol-air (ASHRAE): 35 + (0.9 · 1000 − 63)/17 = 84.2 °C against 40 °C inside; heat downward, Rsi 0.17,
         * Rso 1/17: bare 44.2/0.229 = 193 W/m², with R = 0.528 added 58.4 W/m².
         */
        @Test
        @DisplayName("in summer is that of the sol-air temperature worked by hand")
        void summer() {
            HeatEffect.Flow flow = heat(BENCH.laid("open-roof", 1, "nitrile-foam-19")).summer().value();
            assertThat(flow.bare()).isCloseTo(193.3, within(0.3));
            assertThat(flow.treated()).isCloseTo(58.4, within(0.2));
        }

        /**
         * By hand after ISO 6946: foil at 10 % with a tenth of it dusty gives off 10 + 0.1 · 80 = 18 % of a black
         * face, E = 1/(1/0.18 + 1/0.9 − 1) = 0.176; 20 mm of air with heat downward.
         */
        @Test
        @DisplayName("is less under a bright face that looks at a clean dry gap than under a dull one of like foam")
        void bright() {
            double bright = summer("lined-roof", "foil-foam-10");
            double dull = summer("lined-roof", "nitrile-foam-10");
            assertThat(bright).isLessThan(0.9 * dull);
        }

        @Test
        @DisplayName("is the same under a bright face where it is damp, pressed against the lining or open to the room")
        void dulled() {
            assertThat(summer("damp-roof", "foil-foam-10")).isEqualTo(summer("damp-roof", "nitrile-foam-10"));
            assertThat(summer("tight-roof", "foil-foam-10")).isEqualTo(summer("tight-roof", "nitrile-foam-10"));
            assertThat(summer("open-roof", "foil-foam-10")).isEqualTo(summer("open-roof", "nitrile-foam-10"));
        }

        private double summer(String panel, String foam) {
            return heat(BENCH.laid(panel, 1, foam)).summer().value().treated();
        }

        /**
         * ISO 6946 by hand: 0.04, a cavity of 20 mm and more between dull faces 0.17 to 0.19 (upright, near 5 °C),
         * trim 0.02 and 0.13; 30 K over 0.37 = 81 W/m².
         */
        @Test
        @DisplayName("through a door passes cavity, inner skin and trim, with damping or without")
        void door() {
            HeatEffect.Flow half = heat(BENCH.laid("door", 0.5, "butyl-door")).winter().value();
            assertThat(half.bare()).isBetween(30 / 0.385, 30 / 0.36);
            assertThat(half.treated()).isBetween(0.99 * half.bare(), half.bare());
        }

        @Test
        @DisplayName("has no number where nothing heats the panel or the gap is deeper than the formula holds")
        void outside() {
            assertThat(heat(BENCH.bare("cool-side")).summer().reason()).contains("nothing heats it");
            assertThat(heat(BENCH.bare("deep-roof")).summer().reason()).contains("deeper");
            assertThat(heat(BENCH.bare("deep-roof")).dew().reason()).contains("deeper");
        }
    }

    @Nested
    @DisplayName("each layer at the peak of its place")
    class Peak {
        /**
         * Metal at 110 °C, air at 68 °C, heat upward: 10 mm of foam 0.278 and Rsi 0.10; the foam's outer face 110 °C.
         */
        @Test
        @DisplayName("is held against what it bears, the outermost hottest")
        void peak() {
            HeatEffect heat = heat(BENCH.laid("hot-floor", 1, "nitrile-foam-10", "vinyl-barrier-2"));
            Heated foam = heat.atPeak().get(0);
            Heated barrier = heat.atPeak().get(1);
            assertThat(foam.face()).isCloseTo(110, offset(0.01));
            assertThat(foam.margin()).isCloseTo(95 - 110, offset(0.01));
            // 68 + 42 · (0.10 + 0.0118)/(0.10 + 0.0118 + 0.2778) = 80.05 °C
            assertThat(barrier.face()).isCloseTo(80.05, offset(0.1));
            assertThat(barrier.margin()).isCloseTo(82 - 80.05, offset(0.1));
        }
    }

    @Nested
    @DisplayName("water on cold faces")
    class Water {
        /**
         * Dew point of air at 20 °C and 50 %: 9.3 °C (ASHRAE psychrometric table). Bare skin −10 + 30 · 0.04/0.14 =
         * −1.4 °C.
         */
        @Test
        @DisplayName("settles on a bare skin, and not on bonded foam all over: its face is at 20 − 44.9 · 0.10 = 15.5 °C")
        void dry() {
            Dew dew = heat(BENCH.laid("open-roof", 1, "nitrile-foam-19")).dew().value();
            assertThat(dew.dewPoint()).isCloseTo(9.3, offset(0.05));
            assertThat(dew.bare().coldest()).isCloseTo(-1.4, offset(0.05));
            assertThat(dew.treated().coldest()).isCloseTo(15.5, offset(0.05));
            assertThat(dew.bare().share()).isCloseTo(1, offset(1e-6));
            assertThat(dew.treated().share()).isCloseTo(0, offset(1e-3));
            assertThat(dew.faces()).extracting(Face::reached).containsExactly(false, true);
        }

        @Test
        @DisplayName("settles behind foam that lies loose, though its face is dry")
        void loose() {
            Dew dew = heat(BENCH.laid("open-roof", 1, "nitrile-foam-6-loose")).dew().value();
            assertThat(dew.faces()).extracting(Face::reached).containsExactly(true, true);
            assertThat(dew.faces().get(0).wet()).isTrue();
            assertThat(dew.treated().share()).isCloseTo(1, offset(1e-6));
        }

        @Test
        @DisplayName("settles on the strip that stays bare")
        void strip() {
            Dew dew = heat(BENCH.laid("open-roof", 0.9, "nitrile-foam-19")).dew().value();
            assertThat(dew.treated().share()).isCloseTo(0.1, offset(1e-3));
            assertThat(dew.treated().coldest()).isEqualTo(dew.bare().coldest());
            assertThat(dew.treated().depth()).isCloseTo(0.1 * (9.3 + 1.4), offset(0.02));
        }

        @Test
        @DisplayName("is not told for a vehicle that nobody lives in")
        void notLivedIn() {
            Workbench daily = Workbench.with("body: van, drive: diesel, use: daily", "condensation",
                    panel("roof", "roof", "from: sun, peak: 80 degC", "clearance to: nothing"));
            assertThat(daily.effect(daily.bare("roof")).heat().dew().reason()).contains("nobody lives in it");
            assertThat(daily.effects(daily.bare("roof")).vehicle().gains().get(0).taken().isWithin()).isFalse();
        }
    }
}
