package unthrum.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Rib;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Coverage;
import unthrum.physics.Damping;
import unthrum.physics.Estimate;
import unthrum.physics.Mode;
import unthrum.physics.Ringing;
import unthrum.physics.Sheet;
import unthrum.physics.Skin;
import unthrum.physics.Support;
import unthrum.survey.Curve;
import unthrum.survey.Tap;

/** Cuts a panel into bays and computes how each rings and what damping could do for it. */
final class BayDeriver {

    private final Knowledge knowledge;
    private final Demand demand;
    private final Map<Metalwork, Motion> motions = new HashMap<>();

    /** All that the motion of a bay hangs on. */
    private record Metalwork(Sheet sheet, unthrum.physics.Bay shape, int alongEnds, int acrossEnds) {
    }

    /** How a bay moves: kept, since a panel is derived again and again and this is the costly part. */
    private record Motion(Estimate<Ringing> ringing, double enough, boolean known, double gain, double drive) {
    }

    BayDeriver(Knowledge knowledge, Demand demand) {
        this.knowledge = knowledge;
        this.demand = demand;
    }

    /** A bay with the modes behind its numbers. */
    record Derived(Bay bay, BayModes modes) {
    }

    List<Derived> bays(Panel panel, List<Rib> ribs, Optional<List<Tap>> taps) {
        BayGrid grid = BayGrid.of(panel.length(), panel.width(), ribs);
        List<Derived> bays = new ArrayList<>();
        for (BayGrid.Span across : grid.alongWidth()) {
            for (BayGrid.Span along : grid.alongLength()) {
                bays.add(bay(panel, along, across, bays.size(), taps));
            }
        }
        return bays;
    }

    private Derived bay(Panel panel, BayGrid.Span along, BayGrid.Span across, int index, Optional<List<Tap>> taps) {
        unthrum.physics.Bay shape = shape(panel, along.length(), across.length());
        Motion motion = motions.computeIfAbsent(
                new Metalwork(MetalSheet.of(panel), shape, along.clampedEnds(), across.clampedEnds()), this::motion);
        Band range = motion.known ? motion.ringing.value().frequency() : null;
        Bay bay = new Bay(panel.name(), index + 1, along.length(), across.length(),
                Math.min(along.length(), across.length()), along.length() * across.length(), tap(taps, index),
                motion.known ? range.lower() : Double.NaN, motion.known ? range.upper() : Double.NaN,
                motion.known ? motion.ringing.value().greatestBendingShare() : Double.NaN, motion.enough, motion.gain,
                motion.drive, Double.NaN, Double.NaN, 0, assumed(panel, taps));
        return new Derived(bay, new BayModes(bay.place(), shape, motion.ringing));
    }

    private Motion motion(Metalwork metal) {
        Skin skin = metal.sheet.skin();
        Estimate<Ringing> ringing = ringing(skin, metal.shape, metal.alongEnds, metal.acrossEnds);
        Estimate<Coverage> coverage = Coverage.of(skin, metal.shape, Support.HINGED_SLIDING);
        double enough = enoughCover(ringing, coverage);
        boolean known = ringing.isWithin() && coverage.isWithin();
        return new Motion(ringing, enough, known,
                known ? gain(metal.sheet, ringing.value(), coverage.value().share(enough)) : Double.NaN,
                demand.drive(skin, metal.shape));
    }

    /** The knee of the first mode's curve; a mode of several waves has no single middle, so the usual share serves. */
    private double enoughCover(Estimate<Ringing> ringing, Estimate<Coverage> coverage) {
        boolean oneWave = ringing.isWithin() && ringing.value().first().values().stream()
                .allMatch(m -> m.lengthHalfWaves() == 1 && m.widthHalfWaves() == 1);
        return oneWave && coverage.isWithin()
                ? Coverage.knee(coverage.value()::share, knowledge.number("damping/knee"))
                : knowledge.number("usual/cover");
    }

    private static Tap tap(Optional<List<Tap>> taps, int index) {
        return taps.filter(t -> !t.isEmpty())
                .map(t -> t.size() == 1 ? t.get(0) : index < t.size() ? t.get(index) : Tap.NOT_TAPPED)
                .orElse(Tap.NOT_TAPPED);
    }

    private static Set<String> assumed(Panel panel, Optional<List<Tap>> taps) {
        Set<String> assumed = new HashSet<>();
        if (taps.isEmpty()) {
            assumed.add("tap");
        }
        if (panel.assumed().contains("gauge") || panel.assumed().contains("curve") || panel.assumed().contains("rise")) {
            assumed.addAll(Set.of("lowest", "highest", "bendingShare", "gain", "drive"));
        }
        return Set.copyOf(assumed);
    }

    /** The bay keeps the curvature of the whole panel. */
    private static unthrum.physics.Bay shape(Panel panel, double length, double width) {
        if (panel.curve() == Curve.FLAT || panel.rise() == 0) {
            return unthrum.physics.Bay.flat(length, width);
        }
        unthrum.physics.Bay whole = panel.curve() == Curve.CROWNED
                ? unthrum.physics.Bay.crowned(panel.length(), panel.width(), panel.rise())
                : unthrum.physics.Bay.rolled(panel.length(), panel.width(), panel.rise());
        return new unthrum.physics.Bay(length, width, whole.lengthCurvature(), whole.widthCurvature());
    }

    /** Ribs at the ends of one side only are held as clamps there; where both sides have ribs the longer is taken. */
    private static Estimate<Ringing> ringing(Skin skin, unthrum.physics.Bay shape, int alongEnds, int acrossEnds) {
        if (alongEnds >= acrossEnds) {
            return Ringing.betweenRibs(skin, shape, alongEnds);
        }
        unthrum.physics.Bay turned = new unthrum.physics.Bay(shape.width(), shape.length(), shape.widthCurvature(),
                shape.lengthCurvature());
        return Ringing.betweenRibs(skin, turned, acrossEnds);
    }

    /** At best: by how much a usual damping sheet over the middle lowers the bay's own resonance, however held. */
    private double gain(Sheet sheet, Ringing ringing, double coveredShare) {
        double bare = knowledge.number("usual/bare-loss-factor");
        UsualDamping usual = new UsualDamping(knowledge);
        return ringing.first().values().stream()
                .mapToDouble(mode -> Damping.levelReduction(bare, Damping.modalLossFactor(bare, mode.bendingShare(),
                        coveredShare, usual.on(sheet, mode).lossFactor())))
                .max().orElseThrow();
    }
}
