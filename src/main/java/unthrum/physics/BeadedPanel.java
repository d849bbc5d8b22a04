package unthrum.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import unthrum.physics.Course.Stretch;

/**
 * A flat rectangular panel with parallel pressed beads, moving as a whole or bay by bay, whichever is lower. Beads up
 * to about ten times the gauge are springs: they bend with the panel, and let it fold across them.
 *
 * <p>Range: thin bays (thickness up to a tenth of the shorter side), height up to half the width. Against 24
 * finite-element panels (1 to 6 beads of 2 to 11 mm, hinged and fixed, sliding and held) the first frequency reads
 * from 0.1 % too low to 4 % too high. Source of the method: {@link StripShell}.
 *
 * @param span along the beads, m
 * @param side across them, m
 * @param beads in order from one edge
 * @param stopShort from the edge to where a bead ends, at both ends, m; 0 where it runs to the edge at full height
 * @param runout length over which the height rises from such an end, m
 */
public record BeadedPanel(double span, double side, List<Bead> beads, double stopShort, double runout) {

    /** Height over width up to which a bead is a spring and no wall: as far as the finite elements above go. */
    public static final double TALLEST = 0.5;

    /** By the finite elements above, rounded up. */
    public static final FormulaError ERROR = new FormulaError(0.045, 0.005);

    /** Chords of a rounded bead, and what makes their bending stiffness that of half a sine. */
    private static final int CHORDS = 4;
    private static final double CHORD_FACTOR = 1.05;
    private static final int LEAST_STRIPS = 2;
    private static final int MOST_STRIPS = 4;
    private static final double STRIPS_PER_SIDE = 10;
    /** Where cubics along meet when beads run to the edge, as shares of half the span. */
    private static final double[] NODES = {0, 0.5, 0.85, 1};

    public BeadedPanel {
        beads = List.copyOf(beads);
        if (!(span > 0 && side > 0) || beads.isEmpty() || !(stopShort >= 0)) {
            throw new IllegalArgumentException("a beaded panel has two sides and a bead");
        }
    }

    /** The lowest mode with edges held like this, or why it cannot be told. */
    public Estimate<Mode> first(Skin skin, Support support) {
        double edge = 0;
        for (Bead bead : beads) {
            if (bead.start() <= edge) {
                return Estimate.outside("beads that touch each other or the edge");
            }
            edge = bead.end();
        }
        if (edge >= side) {
            return Estimate.outside("beads that touch each other or the edge");
        }
        if (beads.stream().anyMatch(b -> b.height() > TALLEST * b.width())) {
            return Estimate.outside("a bead taller than half its width is no spring but a wall");
        }
        if (skin.thickness() > ShellModes.THIN * Math.min(span, side)) {
            return Estimate.outside("the skin is too thick for its span: thin-plate theory does not hold");
        }
        if (stopShort > 0 && !(runout > 0 && stopShort + runout < span / 2)) {
            return Estimate.outside("the beads are too short to count as running along the panel");
        }
        return Estimate.within(KEPT.of(new Question(this, skin, support)));
    }

    /** All that a mode hangs on. */
    private record Question(BeadedPanel panel, Skin skin, Support support) {}

    private static final int MOST_KEPT = 2_000;
    private static final Kept<Question, Mode> KEPT = new Kept<>(MOST_KEPT,
            q -> StripShell.lowest(q.skin, q.panel.profile(), q.panel.course(), q.support));

    private double tallest() {
        return beads.stream().mapToDouble(Bead::height).max().orElseThrow();
    }

    private Profile profile() {
        List<double[]> lines = new ArrayList<>();
        lines.add(new double[] {0, 0});
        double from = 0;
        for (Bead bead : beads) {
            bay(lines, from, bead.start());
            section(lines, bead, bead.height() / tallest());
            from = bead.end();
        }
        bay(lines, from, side);
        return new Profile(lines.stream().mapToDouble(l -> l[0]).toArray(),
                lines.stream().mapToDouble(l -> l[1]).toArray());
    }

    private void bay(List<double[]> lines, double from, double to) {
        long strips = Math.max(LEAST_STRIPS, Math.min(MOST_STRIPS, Math.round(STRIPS_PER_SIDE * (to - from) / side)));
        for (int i = 1; i <= strips; i++) {
            lines.add(new double[] {from + (to - from) * i / strips, 0});
        }
    }

    private static void section(List<double[]> lines, Bead bead, double share) {
        if (bead.flank() > 0) {
            lines.add(new double[] {bead.start() + bead.flank(), share});
            lines.add(new double[] {bead.middle(), share});
            lines.add(new double[] {bead.end() - bead.flank(), share});
            lines.add(new double[] {bead.end(), 0});
        } else {
            for (int i = 1; i <= CHORDS; i++) {
                double height = i < CHORDS ? CHORD_FACTOR * Math.sin(Math.PI * i / CHORDS) : 0;
                lines.add(new double[] {bead.start() + bead.width() * i / CHORDS, share * height});
            }
        }
    }

    /** From the middle to one end; the height rises from a bead's end as half a cosine. */
    private Course course() {
        double half = span / 2;
        double height = tallest();
        List<Stretch> stretches = new ArrayList<>();
        if (stopShort == 0) {
            for (int i = 1; i < NODES.length; i++) {
                stretches.add(Course.even(NODES[i - 1] * half, NODES[i] * half, height));
            }
            return new Course(stretches, true);
        }
        double end = half - stopShort;
        double full = end - runout;
        double phase = Math.PI / runout;
        DoubleUnaryOperator falling = x -> height * (1 + Math.cos(phase * (x - full))) / 2;
        DoubleUnaryOperator slope = x -> -height * phase / 2 * Math.sin(phase * (x - full));
        stretches.add(Course.even(0, full, height));
        stretches.add(Course.varied(full, full + runout / 2, falling, slope));
        stretches.add(Course.varied(full + runout / 2, end, falling, slope));
        stretches.add(Course.even(end, half, 0));
        return new Course(stretches, true);
    }
}
