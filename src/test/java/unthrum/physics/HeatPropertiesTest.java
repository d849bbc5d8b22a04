package unthrum.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import unthrum.physics.Condensation.Season;
import unthrum.physics.HeatLayer.AirGap;
import unthrum.physics.HeatLayer.Solid;

@Label("Heat and moisture: what must hold for every panel")
class HeatPropertiesTest {
    private static final double ROUNDING = 1e-6;

    private static HeatFlow roof(double foam, double gap, double emissivity, double outside, double inside) {
        List<HeatLayer> layers = List.of(new Solid(0.0008, 50), new Solid(foam, 0.036), new AirGap(gap, emissivity, 0.9),
                new Solid(0.003, 0.15));
        return UsualSurfaces.through(layers, HeatDirection.DOWN, outside, inside).orElseThrow();
    }

    @Property
    @Label("thicker insulation never warms the inner face in summer, nor does a brighter foil")
    void summer(@ForAll @DoubleRange(min = 0, max = 0.05) @Scale(4) double foam, @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(4) double more,
            @ForAll @DoubleRange(min = 0.003, max = 0.3) @Scale(4) double gap, @ForAll @DoubleRange(min = 0.03, max = 0.9) double emissivity,
            @ForAll @DoubleRange(min = 25, max = 95) double outside) {
        double face = UsualSurfaces.innerFace(roof(foam, gap, emissivity, outside, 25));

        assertThat(UsualSurfaces.innerFace(roof(foam + more, gap, emissivity, outside, 25))).isLessThanOrEqualTo(face + ROUNDING);
        assertThat(UsualSurfaces.innerFace(roof(foam, gap, 0.03, outside, 25))).isLessThanOrEqualTo(face + ROUNDING);
    }

    @Property
    @Label("temperatures fall steadily from the hot side to the cold side and stay between them")
    void steady(@ForAll @DoubleRange(min = 0, max = 0.05) @Scale(4) double foam, @ForAll @DoubleRange(min = 0.003, max = 0.3) @Scale(4) double gap,
            @ForAll @DoubleRange(min = -30, max = 95) double outside, @ForAll @DoubleRange(min = 0, max = 30) double inside) {
        HeatFlow heat = roof(foam, gap, 0.9, outside, inside);
        double towards = Math.signum(outside - inside);
        double last = outside;
        for (double face : heat.faces()) {
            assertThat((last - face) * towards).isGreaterThanOrEqualTo(-ROUNDING);
            last = face;
        }
        assertThat((last - inside) * towards).isGreaterThanOrEqualTo(-ROUNDING);
    }

    @Property
    @Label("the dew point is never above the air temperature, and damper air never has a lower one")
    void dewPoint(@ForAll @DoubleRange(min = -20, max = 50) double celsius, @ForAll @DoubleRange(min = 0.2, max = 1) double humidity,
            @ForAll @DoubleRange(min = 0, max = 1) double way) {
        double dewPoint = Moisture.dewPoint(celsius, humidity).orElseThrow();

        assertThat(dewPoint).isLessThanOrEqualTo(celsius);
        assertThat(Moisture.dewPoint(celsius, humidity + way * (1 - humidity)).orElseThrow())
                .isGreaterThanOrEqualTo(dewPoint - ROUNDING);
        assertThat(Moisture.saturationPressure(dewPoint) / Moisture.saturationPressure(celsius))
                .isBetween(humidity - ROUNDING, humidity + ROUNDING);
    }

    @Property
    @Label("thicker insulation never makes the inner face wetter in winter")
    void winter(@ForAll @DoubleRange(min = 0, max = 0.05) @Scale(4) double foam, @ForAll @DoubleRange(min = 0, max = 0.05) @Scale(4) double more,
            @ForAll @DoubleRange(min = -30, max = 15) double outside) {
        HeatFlow thin = roof(foam, 0.02, 0.9, outside, 20);
        HeatFlow thick = roof(foam + more, 0.02, 0.9, outside, 20);

        assertThat(UsualSurfaces.innerFace(thick)).isGreaterThanOrEqualTo(UsualSurfaces.innerFace(thin) - ROUNDING);
    }

    @Property
    @Label("a face that follows the cold less is never wet for longer, nor is one in drier air")
    void hours(@ForAll @DoubleRange(min = 0, max = 1) double fall, @ForAll @DoubleRange(min = 0, max = 1) double less,
            @ForAll @DoubleRange(min = -30, max = 20) double mean, @ForAll @DoubleRange(min = 0, max = 12) double width,
            @ForAll @DoubleRange(min = 0, max = 20) double dryness, @ForAll @DoubleRange(min = 0.2, max = 5) double spread) {
        Season season = new Season(mean, width);
        double hours = Condensation.hours(fall, season, 20, 20 - dryness, spread);

        assertThat(hours).isBetween(0.0, 1.0);
        assertThat(Condensation.hours(fall * less, season, 20, 20 - dryness, spread))
                .isLessThanOrEqualTo(hours + ROUNDING);
        assertThat(Condensation.hours(fall, season, 20, 20 - dryness - less, spread))
                .isLessThanOrEqualTo(hours + ROUNDING);
    }
}
