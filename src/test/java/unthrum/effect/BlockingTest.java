package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.effect.Blocking.Losses;
import unthrum.physics.ThirdOctave;

@DisplayName("A panel as a wall against sound")
class BlockingTest {

    /** 0.8 mm steel, 6.28 kg/m², 600 mm square, a hole of 100 mm: 0.007854/0.36 = 2.18 % open. */
    private static final Workbench BENCH = Workbench.with("body: van, drive: diesel, use: daily", "engine noise",
            panel("sound", "openings: none"), panel("holed", "openings: [{kind: cable hole, size: 100 mm, state: open}]"),
            panel("drained", "openings: [{kind: drain, size: 100 mm, state: open}]"),
            panel("stiff", "openings: none", 60));

    private static String panel(String name, String openings) {
        return panel(name, openings, 600);
    }

    private static String panel(String name, String openings, int side) {
        return "{panel: " + name + ", zone: bulkhead, skin: {metal: steel, gauge: 0.8 mm}, size: [" + side + " mm, "
                + side + " mm], shape: {curve: flat}, ribs: none, near noise: engine, " + openings + "}";
    }

    private static Losses at500(Treated treated) {
        return BENCH.effect(treated).blocking().get(1).losses().value();
    }

    /**
     * Field incidence, 10 lg[1 + (π f m/415)²] − 5 (Bies, Hansen and Howard; Norton and Karczub): at 500 Hz
     * 22.5 dB for 6.28 kg/m² and 26.8 dB for 10.28 kg/m². A band's energy mean lies 0.1 dB off its centre.
     */
    @Test
    @DisplayName("follows the mass law, bare and under a barrier laid direct")
    void massLaw() {
        Losses losses = at500(BENCH.laid("sound", 1, "vinyl-barrier-2"));
        assertThat(losses.bare()).isCloseTo(22.5, offset(0.15));
        assertThat(losses.treated()).isCloseTo(26.8, offset(0.15));
        assertThat(losses.uncertainty()).isEqualTo(3);
    }

    /** 10 lg of shares: half at 26.8 dB and half at 22.5 dB make 24.1 dB. Crocker, Handbook, composite walls. */
    @Test
    @DisplayName("is flanked by the half that stays bare")
    void flanked() {
        Losses losses = at500(BENCH.laid("sound", 0.5, "vinyl-barrier-2"));
        assertThat(losses.treated()).isCloseTo(24.1, offset(0.15));
        assertThat(losses.paths().withoutBarrier()).isCloseTo(0.73, offset(0.01));
    }

    /** −10 lg 0.0218 = 16.6 dB caps it; with 26.8 dB around the hole 16.2 dB. */
    @Test
    @DisplayName("loses its barrier to an open hole and gets it back when the hole is closed")
    void hole() {
        Losses losses = at500(Workbench.closed(BENCH.laid("holed", 1, "vinyl-barrier-2")));
        assertThat(losses.holesAsFound()).isCloseTo(16.2, offset(0.1));
        assertThat(losses.treated()).isCloseTo(26.8, offset(0.15));
        assertThat(losses.gainOfClosing()).isCloseTo(10.6, offset(0.2));
    }

    @Test
    @DisplayName("keeps a drain open whoever asks to close it")
    void drain() {
        Losses losses = at500(Workbench.closed(BENCH.laid("drained", 1, "vinyl-barrier-2")));
        assertThat(losses.treated()).isEqualTo(losses.holesAsFound()).isLessThan(16.7);
    }

    /**
     * Skin with foam 6.48 kg/m², barrier 4 kg/m² on E/d = 0.5 MPa/6 mm: f₀ = 925 Hz
     * (Hopkins, Sound Insulation, 4.3.5), so at 2 kHz the foam has begun to pay.
     */
    @Test
    @DisplayName("floats a barrier on foam above their resonance, and is less sure about it")
    void floated() {
        PanelEffect direct = BENCH.effect(BENCH.laid("sound", 1, "vinyl-barrier-2"));
        PanelEffect floated = BENCH.effect(BENCH.laid("sound", 1, "pe-foam-6", "vinyl-barrier-2"));
        assertThat(floated.blocking().get(2).losses().value().treated())
                .isGreaterThan(direct.blocking().get(2).losses().value().treated() + 3);
        assertThat(floated.blocking()).allSatisfy(b -> assertThat(b.losses().value().uncertainty()).isEqualTo(5));
        Losses near = BENCH.effect(BENCH.laid("sound", 1, "open-pu-10", "vinyl-barrier-2")).blocking().get(1)
                .losses().value();
        assertThat(near.uncertainty()).as("open foam of 10 mm resonates at 503 Hz").isEqualTo(10);
    }

    @Test
    @DisplayName("has no number below twice the first resonance")
    void stiff() {
        assertThat(BENCH.effect(BENCH.bare("stiff")).blocking().get(1).losses().reason()).contains("first resonance");
        assertThat(BENCH.effect(BENCH.bare("stiff")).blocking().get(0).losses().isWithin()).isFalse();
    }
}
