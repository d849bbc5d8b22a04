package unthrum.effect;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import unthrum.derive.FloatedBarrier;
import unthrum.derive.MetalSheet;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Fixing;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.physics.Bridges;
import unthrum.physics.DoubleLeaf;
import unthrum.physics.Kept;
import unthrum.physics.Leaf;
import unthrum.physics.Partition;
import unthrum.physics.Sheet;
import unthrum.physics.ThirdOctave;
import unthrum.survey.FixingKind;

/**
 * What a panel's skin passes of sound in the air, and of its own shaking, under any layers that lie all over it, in
 * each third octave of {@link ThirdOctave#HEARD}.
 *
 * <p>All layers add their mass; a barrier over foam or felt is a second leaf on a spring, tied to the skin along the
 * panel's edges and at hard fixings; around each fixing a ring stays bare; and some sound always finds a way past
 * (seams, ribs, edges). A glued foam and a fibre behind the trim count by their mass alone. The inner skin of a door, the
 * trim and the cavity between are not in it.
 *
 * <p>Below twice the first resonance of the stiffest bay neither mass nor spring decides. There the figure of the mass
 * stands in, which is too high near the resonance and too low under it, and its uncertainty says so.
 */
public final class WallSound {

    /** Where stiffness and ringing decide and not mass, dB either way. From memory. */
    private static final double BELOW_RESONANCE = 10;

    /**
     * Filled vinyl and rubber sheet bending at sound frequencies, Pa and Poisson's ratio. From memory; with ten times
     * as much or as little the edges cap a floated barrier 5 dB lower or higher.
     */
    private static final double BARRIER_MODULUS = 100e6;
    private static final double BARRIER_POISSON_RATIO = 0.45;
    private static final double BARRIER_LOSS_FACTOR = 0.2;

    /** What ties a barrier to the metal where it clamps or bears on both. */
    private static final Set<FixingKind> HARD = EnumSet.of(FixingKind.BRACKET, FixingKind.THREADED_INSERT,
            FixingKind.CONSOLE_STUD, FixingKind.HARD_STOP, FixingKind.SEAT_BOLT, FixingKind.BELT_ANCHOR);

    private final Knowledge knowledge;
    private final Panel panel;
    private final Sheet sheet;
    private final double massControlledFrom;
    private final double ringShare;
    private final Bridges bridges;

    /**
     * A wall without its ties in every band, kept since panels are twins and layups are tried by the hundred.
     *
     * @param stuck   what would pass if both leaves were stuck together; nothing for a single leaf
     * @param carried movement of the barrier over that of the skin, squared; one for a single leaf
     */
    private record Curves(double[] passed, double[] stuck, double[] carried, double[] uncertainty) {
        private static final int MOST_KEPT = 20_000;
        private static final Kept<Partition, Curves> KEPT = new Kept<>(MOST_KEPT, Curves::computed);

        static Curves of(Partition wall) {
            return KEPT.of(wall);
        }

        private static Curves computed(Partition wall) {
            DoubleLeaf floated = wall instanceof DoubleLeaf two ? two : null;
            List<Partition.Told> told = ThirdOctave.HEARD.stream().map(wall::told).toList();
            return new Curves(told.stream().mapToDouble(Partition.Told::passed).toArray(),
                    each(b -> floated == null ? 0 : floated.stuck(b)), each(b -> floated == null ? 1 : floated.carried(b)),
                    told.stream().mapToDouble(Partition.Told::uncertainty).toArray());
        }

        private static double[] each(ToDoubleFunction<ThirdOctave> figure) {
            return ThirdOctave.HEARD.stream().mapToDouble(figure).toArray();
        }
    }

    public WallSound(Knowledge knowledge, PanelFacts facts) {
        this.knowledge = knowledge;
        this.panel = facts.the(Panel.class);
        this.sheet = MetalSheet.of(panel);
        this.massControlledFrom = Partition.MASS_CONTROLLED_FROM * facts.all(Bay.class).mapToDouble(Bay::highest)
                .filter(Double::isFinite).max().orElse(0);
        List<Fixing> fixings = facts.all(Fixing.class).toList();
        this.ringShare = Math.min(1, fixings.stream().mapToDouble(this::ring).sum() / panel.area());
        int hard = fixings.stream().filter(f -> HARD.contains(f.kind())).mapToInt(Fixing::count).sum();
        this.bridges = new Bridges(2 * (panel.length() + panel.width()) / panel.area(), hard / panel.area());
    }

    /** Area that all fixings of an entry keep bare, m². */
    private double ring(Fixing fixing) {
        double across = fixing.size() + 2 * knowledge.number("fixing/clear-ring");
        return Double.isFinite(across) ? fixing.count() * Math.PI / 4 * across * across : 0;
    }

    /** Share of the incident sound power that passes the skin with these layers, from the metal inward; none: bare. */
    public double[] transmission(List<Material> layers) {
        Partition wall = wall(layers);
        Curves curves = Curves.of(wall);
        double ring = has(layers, Layer.BARRIER) ? ringShare : 0;
        double tied = wall instanceof DoubleLeaf floated ? bridges.passed(floated.skin(), floated.barrier()) : 0;
        double[] bare = ring == 0 ? curves.passed() : Curves.of(leaf(List.of(), 0)).passed();
        double past = Math.pow(10, -knowledge.number("usual/past-the-panel") / 10);
        double[] passed = new double[bare.length];
        for (int i = 0; i < passed.length; i++) {
            passed[i] = Math.min(1, past + (1 - ring) * (curves.passed()[i] + tied * curves.stuck()[i]) + ring * bare[i]);
        }
        return passed;
    }

    /** Uncertainty of each of these as a transmission loss, dB either way. */
    public double[] uncertainty(List<Material> layers) {
        double[] uncertainty = Curves.of(wall(layers)).uncertainty().clone();
        for (int i = 0; i < uncertainty.length; i++) {
            if (ThirdOctave.HEARD.get(i).centre() < massControlledFrom) {
                uncertainty[i] = Math.max(BELOW_RESONANCE, uncertainty[i]);
            }
        }
        return uncertainty;
    }

    /**
     * Share of the power given off by the shaken skin that still gets into the room: one for a bare skin and for layers
     * that move with it, the square of barrier over skin for a floated barrier, more than one at its resonance.
     */
    public double[] cover(List<Material> layers) {
        Partition wall = wall(layers);
        double[] cover = Curves.of(wall).carried().clone();
        if (wall instanceof DoubleLeaf floated) {
            double tied = bridges.piston(floated.barrier());
            for (int i = 0; i < cover.length; i++) {
                cover[i] = ringShare + (1 - ringShare) * (cover[i] + tied);
            }
        }
        return cover;
    }

    /** Whether walls of this kind were ever measured and compared; else its figures are computed only. */
    public boolean measured(List<Material> layers) {
        return wall(layers).measured();
    }

    /** Resonance of skin, foam and barrier, Hz; none where nothing floats. */
    public OptionalDouble resonance(List<Material> layers) {
        return floated(layers).map(f -> OptionalDouble.of(f.resonance())).orElse(OptionalDouble.empty());
    }

    private Partition wall(List<Material> layers) {
        Optional<DoubleLeaf> floated = floated(layers);
        return floated.isPresent() ? floated.get() : leaf(layers, 0);
    }

    /** The mass of the spring goes half with either leaf. */
    private Optional<DoubleLeaf> floated(List<Material> layers) {
        int spring = position(layers, Layer.DECOUPLER);
        int barrier = position(layers, Layer.BARRIER);
        if (spring < 0 || barrier < spring || layers.get(spring).springModulus().isEmpty()) {
            return Optional.empty();
        }
        Material foam = layers.get(spring);
        double half = foam.surfaceDensity().si() / 2;
        Sheet heavySheet = new Sheet(BARRIER_MODULUS, BARRIER_POISSON_RATIO, layers.get(barrier).density(),
                layers.get(barrier).thickness().si());
        Leaf heavy = Leaf.stiff(half + Stack.mass(layers.subList(spring + 1, layers.size())),
                heavySheet.flexuralRigidity(), BARRIER_LOSS_FACTOR);
        return Optional.of(new DoubleLeaf(leaf(layers.subList(0, spring), half), heavy,
                FloatedBarrier.spring(foam, knowledge), Bridges.NONE));
    }

    private Leaf leaf(List<Material> layers, double more) {
        return Leaf.stiff(panel.skinWeight() + Stack.mass(layers) + more, sheet.flexuralRigidity(),
                knowledge.number("usual/bare-loss-factor"));
    }

    private static boolean has(List<Material> layers, Layer layer) {
        return position(layers, layer) >= 0;
    }

    private static int position(List<Material> layers, Layer layer) {
        for (int i = 0; i < layers.size(); i++) {
            if (layers.get(i).layer() == layer) {
                return i;
            }
        }
        return -1;
    }
}
