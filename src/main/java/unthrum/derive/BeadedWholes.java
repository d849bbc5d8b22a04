package unthrum.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import unthrum.derive.BayGrid.Span;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Bay;
import unthrum.physics.Bead;
import unthrum.physics.BeadedPanel;
import unthrum.physics.Estimate;
import unthrum.physics.Mode;
import unthrum.physics.Ringing;
import unthrum.physics.Sheet;
import unthrum.physics.Support;
import unthrum.survey.BeadShape;
import unthrum.survey.Run;

/**
 * Computes panels with beads as wholes. What the survey leaves open is taken softest for the low end of the range and
 * stiffest for the high one: low, rounded beads that stop short of the edges, or tall ones with a flat top that run to
 * them.
 */
final class BeadedWholes {

    /** Flank of a bead with a flat top, as a share of its width; common practice, no source. */
    private static final double FLANK = 0.25;
    /** A bead's ends take no more of its run than this, each way; common practice, no source. */
    private static final double MOST_END = 0.125;
    /** No bead's height is read more than twice too large; common practice, no source. */
    private static final double LEAST_READ = 0.5;

    private final Knowledge knowledge;
    private final ReadingErrors errors;
    private final Map<List<?>, BeadedWhole> known = new HashMap<>();

    /** A bead as surveyed, m, its middle counted from where the panel begins. */
    record Surveyed(Run runs, double at, double width, OptionalDouble height, Optional<BeadShape> section,
                    OptionalDouble stopsShort) {
    }

    BeadedWholes(Knowledge knowledge, ReadingErrors errors) {
        this.knowledge = knowledge;
        this.errors = errors;
    }

    /** Whether beads as tall as that, so wide, bend with their panel. */
    static boolean isSpring(double width, OptionalDouble height) {
        return height.isEmpty() || height.getAsDouble() <= BeadedPanel.TALLEST * width;
    }

    /** The whole between closed ribs; empty where no bead lies in it. */
    Optional<BeadedWhole> of(Sheet sheet, Span along, Span across, Bay region, List<Surveyed> beads) {
        List<Surveyed> inside = beads.stream().filter(b -> b.runs == Run.ACROSS ? holds(along, b) : holds(across, b))
                .map(b -> moved(b, b.runs == Run.ACROSS ? along.from() : across.from()))
                .sorted(Comparator.comparingDouble(Surveyed::at)).toList();
        return inside.isEmpty() ? Optional.empty() : Optional.of(known.computeIfAbsent(
                List.of(sheet, region, inside), k -> whole(sheet, region, inside)));
    }

    private static boolean holds(Span span, Surveyed bead) {
        return bead.at > span.from() && bead.at < span.from() + span.length();
    }

    private static Surveyed moved(Surveyed b, double from) {
        return new Surveyed(b.runs, b.at - from, b.width, b.height, b.section, b.stopsShort);
    }

    private BeadedWhole whole(Sheet sheet, Bay region, List<Surveyed> beads) {
        Estimate<Mode> soft = Estimate.outside("");
        Estimate<Mode> stiff = soft;
        for (Run run : Run.values()) {
            List<Surveyed> family = beads.stream().filter(b -> b.runs == run).toList();
            if (!family.isEmpty()) {
                Estimate<Mode> low = panel(region, family, false)
                        .first(errors.thinner(sheet).skin(), Support.HINGED_SLIDING);
                Estimate<Mode> high = panel(region, family, true)
                        .first(errors.thicker(sheet).skin(), Support.CLAMPED_FIXED);
                if (!low.isWithin() || !high.isWithin()) {
                    String reason = low.isWithin() ? high.reason() : low.reason();
                    return new BeadedWhole(region, Estimate.outside(reason), Estimate.outside(reason));
                }
                soft = soft.isWithin() && soft.value().frequency() < low.value().frequency() ? soft : low;
                stiff = stiff.isWithin() ? together(stiff.value(), high.value()) : high;
            }
        }
        return told(sheet, region, soft.value(), stiff.value());
    }

    private BeadedWhole told(Sheet sheet, Bay region, Mode soft, Mode stiff) {
        Mode stiffest = stiff;
        if (!region.isFlat()) {
            Estimate<Ringing> curved = Ringing.of(errors.thicker(sheet).skin(), errors.smaller(region));
            if (!curved.isWithin()) {
                return new BeadedWhole(region, curved, Estimate.outside(curved.reason()));
            }
            stiffest = together(stiff, curved.value().first().get(Support.CLAMPED_FIXED)).value();
        }
        Ringing ringing = new Ringing(Map.of(Support.HINGED_SLIDING, soft, Support.CLAMPED_FIXED, stiffest),
                BeadedPanel.ERROR);
        return new BeadedWhole(region, Estimate.within(ringing), Estimate.within(ringing.told()));
    }

    /**
     * Two ways of stiffening one sheet, beads that cross or beads on a curve, reach at most about f² = f₁² + f₂²: each
     * counts the sheet itself once more, and neither hinders the other.
     */
    private static Estimate<Mode> together(Mode one, Mode other) {
        double square = Math.pow(one.frequency(), 2) + Math.pow(other.frequency(), 2);
        double share = (one.bendingShare() * Math.pow(one.frequency(), 2)
                + other.bendingShare() * Math.pow(other.frequency(), 2)) / square;
        return Estimate.within(new Mode(Math.sqrt(square), share, 1, 1));
    }

    private BeadedPanel panel(Bay region, List<Surveyed> family, boolean stiff) {
        boolean acrossLength = family.get(0).runs == Run.ACROSS;
        double span = acrossLength ? region.width() : region.length();
        double side = acrossLength ? region.length() : region.width();
        double end = stiff ? errors.shorter(span) : errors.longer(span);
        double most = MOST_END * end;
        double widest = family.stream().mapToDouble(Surveyed::width).max().orElseThrow();
        DoubleStream stops = family.stream().mapToDouble(b -> b.stopsShort.orElse(
                stiff ? 0 : Math.min(most, knowledge.number("usual/bead-stop"))));
        double stop = (stiff ? stops.min() : stops.max()).orElseThrow();
        double scale = (stiff ? errors.shorter(side) : errors.longer(side)) / side;
        List<Bead> beads = new ArrayList<>();
        for (Surveyed bead : family) {
            beads.add(new Bead(bead.at * scale, bead.width, height(bead, stiff), flank(bead, stiff)));
        }
        return new BeadedPanel(end, side * scale, beads, stop, Math.min(most, widest));
    }

    private double height(Surveyed bead, boolean stiff) {
        double most = BeadedPanel.TALLEST * bead.width;
        if (bead.height.isEmpty()) {
            double usual = stiff ? knowledge.number("usual/tall-bead") : knowledge.number("usual/low-bead");
            return Math.min(most, usual);
        }
        double read = bead.height.getAsDouble();
        return stiff ? Math.min(most, read + errors.beadHeight()) : Math.max(LEAST_READ * read, read - errors.beadHeight());
    }

    private static double flank(Surveyed bead, boolean stiff) {
        boolean flat = bead.section.map(s -> s == BeadShape.FLAT_TOP).orElse(stiff);
        return flat ? FLANK * bead.width : 0;
    }
}
