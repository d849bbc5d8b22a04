package unthrum.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
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
import unthrum.facts.Room;
import unthrum.facts.Vehicle;
import unthrum.reading.Words;
import unthrum.survey.Face;
import unthrum.survey.Zone;

@Label("Heat and wet hours: what must hold on every panel")
class HeatGainPropertiesTest {

    private static final double ROUNDING = 1e-6;
    private static final List<String> FOAMS =
            List.of("nitrile-foam-6", "nitrile-foam-10", "nitrile-foam-13", "nitrile-foam-19");
    private static final List<String> SHEETS = List.of("butyl-1.5", "butyl-2", "butyl-3", "butyl-4", "butyl-door",
            "butyl-2-stiff-face", "butyl-2-hot");

    /** Below this the air of a gap between dull faces holds heat back better than foam that would take its place. */
    private static final double THIN_GAP = 0.002;

    /** Skin that is open to the room resists so little that 4 mm of butyl over half of it saves 5 %. */
    private static final double USUAL = 0.002;

    /** In less room a sheet takes more of the still air than it replaces. */
    private static final double ROOM = 0.01;
    private static final Set<Face> ROOM_BACK =
            Set.of(Face.TRIM, Face.LINING, Face.CARPET, Face.MOULDED_MAT, Face.FLOOR_BOARD);

    @Provide
    Arbitrary<Workbench> benches() {
        Arbitrary<Zone> zone = Arbitraries.of(Zone.class);
        Arbitrary<Face> to = Arbitraries.of(Face.class);
        Arbitrary<Integer> clearance = Arbitraries.integers().between(0, 300);
        Arbitrary<Integer> coldest = Arbitraries.integers().between(-30, 15);
        Arbitrary<Integer> humidity = Arbitraries.integers().between(20, 95);
        Arbitrary<String> wet = Arbitraries.of("dry", "damp", "wet");
        return Combinators.combine(zone, to, clearance, coldest, humidity, wet).as((z, t, c, cold, damp, w) ->
                Workbench.with("body: van, drive: diesel, use: [lived in], coldest: " + cold
                                + " degC, indoor: {temperature: 19 degC, humidity: " + damp + " %}", "condensation",
                        "{panel: p, zone: " + Words.of(z) + ", size: [1 m, 1 m], skin: {metal: steel, gauge: 0.7 mm}, "
                                + "heat: {from: sun, peak: 80 degC}, clearance: " + c + " mm, clearance to: "
                                + Words.of(t) + ", wet: " + w + "}"));
    }

    private static HeatGain gain(Workbench bench) {
        return new HeatGain(Workbench.KNOWLEDGE, bench.panel("").the(Vehicle.class), bench.panel("p"));
    }

    @Property(tries = 1000)
    @Label("thicker foam, or more of it, never lets more heat through nor leaves the panel wet for longer")
    void thicker(@ForAll("benches") Workbench bench, @ForAll @IntRange(min = -1, max = 2) int thinner,
            @ForAll @DoubleRange(min = 0.01, max = 1) double cover, @ForAll @DoubleRange(min = 0.01, max = 1) double less) {
        double gap = bench.panel("p").the(Room.class).clearance()
                - Workbench.material(FOAMS.get(thinner + 1)).thickness().si();
        Assume.that(gap > THIN_GAP || gap < -Workbench.material(FOAMS.get(3)).thickness().si());
        HeatGain gain = gain(bench);
        Layup thick = bench.laid("p", cover, FOAMS.get(thinner + 1)).layup();
        Layup thin = thinner < 0 ? Layup.NOTHING : bench.laid("p", cover, FOAMS.get(thinner)).layup();
        Layup fewer = bench.laid("p", cover * less, FOAMS.get(thinner + 1)).layup();
        for (Layup worse : List.of(thin, fewer)) {
            noMore(gain.summer(thick), gain.summer(worse));
            noMore(gain.winter(thick), gain.winter(worse));
            noMore(gain.wet(thick), gain.wet(worse));
        }
    }

    @Property(tries = 300)
    @Label("foam that conducts less never lets more heat through nor leaves the panel wet for longer")
    void better(@ForAll("benches") Workbench bench, @ForAll @DoubleRange(min = 0.01, max = 1) double cover) {
        HeatGain gain = gain(bench);
        Layup better = bench.laid("p", cover, "nitrile-foam-10").layup();
        Layup worse = bench.laid("p", cover, "packing-foam-10").layup();
        noMore(gain.summer(better), gain.summer(worse));
        noMore(gain.winter(better), gain.winter(worse));
        noMore(gain.wet(better), gain.wet(worse));
    }

    private static void noMore(OptionalDouble better, OptionalDouble worse) {
        assertThat(better.isPresent()).isEqualTo(worse.isPresent());
        if (better.isPresent()) {
            assertThat(better.getAsDouble()).isLessThanOrEqualTo(worse.getAsDouble() + ROUNDING);
        }
    }

    @Property(tries = 500)
    @Label("a damping patch over up to half of a panel changes the heat lost in winter by less than 3 %")
    void patch(@ForAll("benches") Workbench bench, @ForAll @IntRange(max = 6) int sheet,
            @ForAll @DoubleRange(min = 0.05, max = 0.5) double cover) {
        HeatGain gain = gain(bench);
        OptionalDouble bare = gain.winter(Layup.NOTHING);
        Room room = bench.panel("p").the(Room.class);
        Assume.that(bare.isPresent() && (ROOM_BACK.contains(room.to()) ? room.clearance() >= ROOM
                : Workbench.material(SHEETS.get(sheet)).thickness().si() <= USUAL));
        double patched = gain.winter(bench.laid("p", cover, SHEETS.get(sheet)).layup()).orElseThrow();
        assertThat(patched / bare.getAsDouble()).isBetween(0.97, 1.03);
    }
}
