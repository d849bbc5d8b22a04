package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import unthrum.facts.Panel;
import unthrum.facts.Vehicle;

@DisplayName("Heat and wet hours for the search")
class HeatGainTest {

    /** A camper in frost: condensation comes first, summer heat second. */
    private static final Workbench CAMPER = Workbench.with(
            "body: van, drive: diesel, use: [lived in], coldest: -5 degC, "
                    + "indoor: {temperature: 18 degC, humidity: 55 %}",
            "condensation, summer heat",
            "{panel: roof, zone: roof, skin: {metal: steel, gauge: 0.8 mm}, size: [1 m, 2 m], shape: {curve: flat}, "
                    + "ribs: none, wet: dry, heat: {from: sun, peak: 80 degC}, clearance: 30 mm, clearance to: lining}",
            "{panel: deep, zone: roof, skin: {metal: steel, gauge: 0.8 mm}, size: [1 m, 2 m], shape: {curve: flat}, "
                    + "ribs: none, heat: {from: none, peak: 60 degC}, clearance: 500 mm, clearance to: lining}");

    private static HeatGain gain(Workbench bench, String panel) {
        return new HeatGain(Workbench.KNOWLEDGE, bench.panel("").the(Vehicle.class), bench.panel(panel));
    }

    @Test
    @DisplayName("tells 19 mm of foam that keeps the face dry from 10 mm with a bright face that leaves it wet")
    void brightFaceAgainstDryFace() {
        HeatGain gain = gain(CAMPER, "roof");
        Treated dry = CAMPER.laid("roof", 1, "nitrile-foam-19");
        Treated bright = CAMPER.laid("roof", 1, "foil-foam-10");
        double wet = gain.wet(bright.layup()).orElseThrow();

        assertThat(wet).isLessThan(gain.wet(Layup.NOTHING).orElseThrow());
        assertThat(gain.wet(dry.layup()).orElseThrow()).isLessThan(0.25 * wet);
        assertThat(CAMPER.effect(dry).heat().dew().value().treated().share()).isLessThan(0.25);
        assertThat(CAMPER.effect(bright).heat().dew().value().treated().share()).isGreaterThan(0.9);
    }

    @Test
    @DisplayName("are the very numbers of the effects told")
    void same() {
        for (String panel : new String[] {"roof", "deep"}) {
            for (Treated treated : new Treated[] {CAMPER.laid(panel, 1, "nitrile-foam-19"),
                CAMPER.laid(panel, 0.7, "butyl-2", "nitrile-foam-10"), CAMPER.bare(panel)}) {
                HeatGain gain = gain(CAMPER, panel);
                HeatEffect effect = CAMPER.effect(treated).heat();
                double area = treated.facts().the(Panel.class).area();

                assertThat(gain.summer(treated.layup()).isPresent()).isEqualTo(effect.summer().isWithin());
                assertThat(gain.winter(treated.layup()).isPresent()).isEqualTo(effect.winter().isWithin());
                assertThat(gain.wet(treated.layup()).isPresent()).isEqualTo(effect.dew().isWithin());
                effect.summer().map(f -> assertThat(gain.summer(treated.layup())).hasValue(f.wattsTreated()));
                effect.winter().map(f -> assertThat(gain.winter(treated.layup())).hasValue(f.wattsTreated()));
                effect.dew().map(d -> assertThat(gain.wet(treated.layup()))
                        .hasValue(d.treated().hours().about() * area));
            }
        }
    }

    @Test
    @DisplayName("are empty where nobody lives, nothing heats the panel or the gap is too deep")
    void empty() {
        assertThat(gain(CAMPER, "deep").summer(Layup.NOTHING)).isEmpty();
        assertThat(gain(CAMPER, "deep").winter(Layup.NOTHING)).isEmpty();
        assertThat(gain(CAMPER, "deep").wet(Layup.NOTHING)).isEmpty();
        Workbench parcels = Workbench.with("body: van, drive: diesel, use: [load carrying]", "winter cold",
                "{panel: p, zone: side, size: [1 m, 1 m], skin: {metal: steel, gauge: 0.8 mm}}");
        assertThat(gain(parcels, "p").wet(Layup.NOTHING)).isEmpty();
        assertThat(gain(parcels, "p").winter(Layup.NOTHING)).isPresent();
    }

    /**
     * By hand: bare open roof, R = 0.14, fall 0.10/0.14 = 0.714; mean −15 + 14 = −1 °C; face on average
     * 20 − 0.714 · 21 = 5 °C, spread √((0.714 · 6)² + 1² + 1.5²) = 4.65 K; dew point of 20 °C and 50 % 9.26 °C:
     * Φ(4.26/4.65) = Φ(0.916) = 0.820.
     */
    @Test
    @DisplayName("count the hours that a bare open roof is wet as worked by hand")
    void hours() {
        Workbench open = Workbench.with("body: van, drive: diesel, use: [lived in], coldest: -15 degC, "
                        + "indoor: {temperature: 20 degC, humidity: 50 %}", "condensation",
                "{panel: p, zone: roof, size: [1 m, 1 m], skin: {metal: steel, gauge: 0.8 mm}, clearance to: nothing}");
        assertThat(gain(open, "p").wet(Layup.NOTHING).orElseThrow()).isBetween(0.818, 0.822);
    }
}
