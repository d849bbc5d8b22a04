package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import unthrum.material.Material;
import unthrum.physics.Bridges;
import unthrum.physics.Decoupler;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Leaf;
import unthrum.physics.Sheet;
import unthrum.physics.ThirdOctave;

@DisplayName("What a skin passes under layers, in each third octave")
class WallSoundTest {

    /** 0.8 mm steel, 6.28 kg/m², 600 mm square, without and with fixings. */
    private static final Workbench BENCH = Workbench.with("body: van, drive: diesel, use: daily", "engine noise",
            panel("plain", "none", 600), panel("clipped", "[{kind: lining clip, size: 10 mm, count: 20}]", 600),
            panel("bolted", "[{kind: bracket, size: 10 mm, count: 20}]", 600), panel("small", "none", 60));

    private static String panel(String name, String fixings, int side) {
        return "{panel: " + name + ", zone: bulkhead, skin: {metal: steel, gauge: 0.8 mm}, size: [" + side + " mm, "
                + side + " mm], shape: {curve: flat}, ribs: none, near noise: engine, openings: none, fixings: "
                + fixings + "}";
    }

    private static WallSound wall(String panel) {
        return new WallSound(Workbench.KNOWLEDGE, BENCH.panel(panel));
    }

    private static List<Material> of(String... materials) {
        return Arrays.stream(materials).map(Workbench::material).toList();
    }

    private static int at(ThirdOctave band) {
        return ThirdOctave.HEARD.indexOf(band);
    }

    private static double loss(String panel, ThirdOctave band, String... materials) {
        return -10 * Math.log10(wall(panel).transmission(of(materials))[at(band)]);
    }

    @Test
    @DisplayName("is told from 25 Hz to 5 kHz, more mass never passing more")
    void mass() {
        double[] bare = wall("plain").transmission(of());
        double[] light = wall("plain").transmission(of("butyl-2"));
        double[] heavy = wall("plain").transmission(of("butyl-2", "vinyl-barrier-2"));
        assertThat(bare).hasSize(24);
        for (int i = 0; i < 24; i++) {
            assertThat(light[i]).isLessThanOrEqualTo(bare[i]);
            assertThat(heavy[i]).isLessThanOrEqualTo(light[i]);
        }
        assertThat(loss("plain", ThirdOctave.HZ_500)).isCloseTo(22.0, offset(0.15));
    }

    @Test
    @DisplayName("glued foam without a barrier counts by its mass alone: next to nothing")
    void gluedFoam() {
        assertThat(loss("plain", ThirdOctave.HZ_2000, "pe-foam-6") - loss("plain", ThirdOctave.HZ_2000))
                .isCloseTo(20 * Math.log10(6.48 / 6.28), offset(0.05));
    }

    @Nested
    @DisplayName("With a barrier on foam")
    class Floated {
        private static final String[] FLOATED = {"pe-foam-6", "vinyl-barrier-2"};

        /** Skin, foam and barrier: 623 Hz on foam as told, 440 to 880 Hz on foam half to twice as stiff. */
        @Test
        @DisplayName("passes more than bare metal near the resonance, as much as laid direct far below, less above")
        void curve() {
            assertThat(loss("plain", ThirdOctave.HZ_630, FLOATED)).isLessThan(loss("plain", ThirdOctave.HZ_630) - 2);
            assertThat(loss("plain", ThirdOctave.HZ_100, FLOATED))
                    .isCloseTo(loss("plain", ThirdOctave.HZ_100, "vinyl-barrier-2"), offset(0.6));
            assertThat(loss("plain", ThirdOctave.HZ_1600, FLOATED))
                    .isGreaterThan(loss("plain", ThirdOctave.HZ_1600, "vinyl-barrier-2") + 3);
            assertThat(wall("plain").resonance(of(FLOATED)).orElseThrow()).isCloseTo(623, offset(1.0));
            assertThat(wall("plain").resonance(of("vinyl-barrier-2"))).isEmpty();
        }

        /** 20 hard brackets and 2.4 m of edge on 0.36 m², on a barrier of 100 MPa: the physics of both leaves by itself. */
        @Test
        @DisplayName("counts edges and hard fixings as ties, and what finds its way past besides")
        void ties() {
            double rigidity = 100e6 * Math.pow(0.002, 3) / (12 * (1 - 0.45 * 0.45));
            DoubleLeaf tied = new DoubleLeaf(Leaf.stiff(6.28 + 0.1, Sheet.steel(0.0008).flexuralRigidity(), 0.01),
                    Leaf.stiff(4.1, rigidity, 0.2), Decoupler.closedCell(0.006, 230e3, 0.2 / 0.006, 0.15),
                    new Bridges(2.4 / 0.36, 20 / 0.36));
            double rings = 20 * Math.PI / 4 * 0.02 * 0.02 / 0.36;
            double[] bare = wall("bolted").transmission(of());
            double[] passed = wall("bolted").transmission(of(FLOATED));
            for (ThirdOctave band : ThirdOctave.HEARD) {
                double expected = 1e-5 + (1 - rings) * tied.passed(band) + rings * (bare[at(band)] - 1e-5);
                assertThat(10 * Math.log10(passed[at(band)])).isCloseTo(10 * Math.log10(expected), offset(0.01));
            }
        }

        @Test
        @DisplayName("never holds back more than finds its way past the panel, 50 dB")
        void past() {
            for (String foam : List.of("open-pu-10", "pe-foam-6", "pe-foam-10-loose", "rag-felt-8")) {
                for (ThirdOctave band : ThirdOctave.HEARD) {
                    assertThat(loss("plain", band, foam, "vinyl-barrier-3")).isLessThan(50);
                }
            }
            assertThat(loss("plain", ThirdOctave.HZ_4000, "open-pu-10", "vinyl-barrier-3")).isGreaterThan(44);
        }

        /** 20 rings of 20 mm on 0.36 m²: 1.75 % stay bare, which alone caps the panel 17.6 dB above the bare skin. */
        @Test
        @DisplayName("is capped by the bare rings around its fixings")
        void rings() {
            double bare = loss("clipped", ThirdOctave.HZ_2500);
            assertThat(loss("clipped", ThirdOctave.HZ_2500, FLOATED)).isLessThan(bare + 17.6)
                    .isLessThan(loss("plain", ThirdOctave.HZ_2500, FLOATED) - 0.5);
        }

        @Test
        @DisplayName("passes a shaken skin's own sound below, more of it at the barrier's own resonance, little above")
        void shaken() {
            double[] cover = wall("plain").cover(of(FLOATED));
            assertThat(cover[at(ThirdOctave.HZ_50)]).isCloseTo(1, offset(0.05));
            assertThat(cover[at(ThirdOctave.HZ_500)]).isGreaterThan(4);
            assertThat(cover[at(ThirdOctave.HZ_2000)]).isLessThan(0.02);
            assertThat(wall("bolted").cover(of(FLOATED))[at(ThirdOctave.HZ_5000)])
                    .isGreaterThan(cover[at(ThirdOctave.HZ_5000)]);
            assertThat(wall("plain").cover(of())).containsOnly(1);
            assertThat(wall("plain").cover(of("butyl-2", "vinyl-barrier-2"))).containsOnly(1);
        }

        @Test
        @DisplayName("is computed only, felt of some millimetres too; a single leaf was measured")
        void measured() {
            assertThat(wall("plain").measured(of(FLOATED))).isFalse();
            assertThat(wall("plain").measured(of("rag-felt-8", "vinyl-barrier-2"))).isFalse();
            assertThat(wall("plain").measured(of())).isTrue();
            assertThat(wall("plain").measured(of("butyl-2", "vinyl-barrier-2"))).isTrue();
        }

        @Test
        @DisplayName("is less certain than laid direct in every band")
        void uncertainty() {
            double[] floated = wall("plain").uncertainty(of(FLOATED));
            double[] direct = wall("plain").uncertainty(of("vinyl-barrier-2"));
            for (int i = 0; i < 24; i++) {
                assertThat(floated[i]).isGreaterThanOrEqualTo(direct[i]);
            }
            assertThat(floated[at(ThirdOctave.HZ_630)]).isGreaterThan(7);
        }
    }

    @Test
    @DisplayName("below twice its bay's resonance is told as mass, give or take 10 dB")
    void stiff() {
        assertThat(wall("small").uncertainty(of())[at(ThirdOctave.HZ_500)]).isEqualTo(10);
        assertThat(wall("small").transmission(of())).isEqualTo(wall("plain").transmission(of()));
    }

    @Test
    @DisplayName("the usual foam is the catalogue's usual bed of a barrier, and the usual barrier its usual one")
    void usual() {
        assertThat(Workbench.KNOWLEDGE.number("usual/foam-modulus"))
                .isEqualTo(Workbench.material("pe-foam-6").springModulus().orElseThrow().si());
        assertThat(Workbench.KNOWLEDGE.number("usual/foam-density"))
                .isCloseTo(Workbench.material("pe-foam-6").density(), offset(0.5));
        assertThat(Workbench.KNOWLEDGE.number("usual/barrier-weight"))
                .isEqualTo(Workbench.material("vinyl-barrier-2").surfaceDensity().si());
        assertThat(Workbench.KNOWLEDGE.number("usual/barrier-thickness"))
                .isEqualTo(Workbench.material("vinyl-barrier-2").thickness().si());
    }
}
