package unthrum.derive;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Bay;
import unthrum.physics.Coverage;
import unthrum.physics.Damping;
import unthrum.physics.Estimate;
import unthrum.physics.FormulaError;
import unthrum.physics.Mode;
import unthrum.physics.Ringing;
import unthrum.physics.Sheet;
import unthrum.physics.ShellModes;
import unthrum.physics.Skin;
import unthrum.physics.Support;
import unthrum.physics.TaperedRoll;

/** How single bays ring and what damping could do for them: kept, since a panel is derived again and again. */
final class BayMotions {

    private final Knowledge knowledge;
    private final Demand demand;
    private final ReadingErrors errors;
    private final Map<Metalwork, Motion> known = new HashMap<>();

    /**
     * All that the motion of a bay hangs on.
     *
     * @param softest the bay at the flat and large end of what was read
     * @param stiffest at the round and small end
     * @param roll the bay's taper, where it has one
     */
    private record Metalwork(Sheet sheet, Bay shape, Bay softest, Bay stiffest, Optional<TaperedRoll> roll,
                             int alongEnds, int acrossEnds) {
    }

    /**
     * How a bay moves.
     *
     * @param ringing as read
     * @param told its range with the errors of reading and formula
     * @param enough share to cover
     */
    record Motion(Bay shape, Estimate<Ringing> ringing, Estimate<Band> told, double enough, double gain,
                  double drive) {
    }

    BayMotions(Knowledge knowledge, Demand demand, ReadingErrors errors) {
        this.knowledge = knowledge;
        this.demand = demand;
        this.errors = errors;
    }

    Motion of(Panel panel, PanelForm form, BayGrid.Span along, BayGrid.Span across) {
        return known.computeIfAbsent(metalwork(panel, form, along, across), this::motion);
    }

    /** A roll that tapers is solved as such across its whole width; a part of it spans its flattest and roundest. */
    private Metalwork metalwork(Panel panel, PanelForm form, BayGrid.Span along, BayGrid.Span across) {
        Optional<TaperedRoll> roll = across.length() == panel.width()
                ? form.tapered(along.from(), along.from() + along.length()) : Optional.empty();
        PanelForm flattest = roll.isPresent() ? form : form.even(false);
        PanelForm roundest = roll.isPresent() ? form : form.even(true);
        return new Metalwork(MetalSheet.of(panel), form.part(along.length(), across.length()),
                errors.larger(flattest.raised(-errors.rise()).part(along.length(), across.length())),
                errors.smaller(roundest.raised(errors.rise()).part(along.length(), across.length())), roll,
                along.clampedEnds(), across.clampedEnds());
    }

    private Motion motion(Metalwork metal) {
        Skin skin = metal.sheet.skin();
        Estimate<Ringing> even = ringing(skin, metal.shape, metal.alongEnds, metal.acrossEnds);
        Estimate<Ringing> ringing = metal.roll.isPresent() ? metal.roll.get().ringing(skin) : even;
        Estimate<Coverage> coverage = Coverage.of(skin, metal.shape, Support.HINGED_SLIDING);
        double enough = enoughCover(ringing, coverage);
        boolean isKnown = ringing.isWithin() && coverage.isWithin();
        return new Motion(metal.shape, ringing,
                isKnown ? Estimate.within(told(metal, even.value(), ringing.value())) : Estimate.outside(ringing.reason()),
                enough, isKnown ? gain(metal.sheet, ringing.value(), coverage.value().share(enough)) : Double.NaN,
                demand.drive(skin, metal.shape));
    }

    /** What was computed as read, moved by as much as the readings' errors move the evenly curved bay. */
    private Band told(Metalwork metal, Ringing even, Ringing ringing) {
        double lowest = ringing.frequency().lower();
        double highest = ringing.frequency().upper();
        FormulaError error = ringing.error();
        Estimate<Mode> soft = first(errors.thinner(metal.sheet).skin(), metal.softest, metal, Support.HINGED_SLIDING);
        Estimate<Mode> stiff = first(errors.thicker(metal.sheet).skin(), metal.stiffest, metal, Support.CLAMPED_FIXED);
        double down = soft.isWithin() ? soft.value().frequency() / even.frequency().lower() : 1;
        double up = stiff.isWithin() ? stiff.value().frequency() / even.frequency().upper() : 1;
        return error.around(lowest * Math.min(1, down), highest * Math.max(1, up));
    }

    private static Estimate<Mode> first(Skin skin, Bay shape, Metalwork metal, Support support) {
        return metal.alongEnds >= metal.acrossEnds ? ShellModes.lowest(skin, shape, support, metal.alongEnds)
                : ShellModes.lowest(skin, turned(shape), support, metal.acrossEnds);
    }

    /** The knee of the first mode's curve; a mode of several waves has no single middle, so the usual share serves. */
    private double enoughCover(Estimate<Ringing> ringing, Estimate<Coverage> coverage) {
        boolean oneWave = ringing.isWithin() && ringing.value().first().values().stream()
                .allMatch(m -> m.lengthHalfWaves() == 1 && m.widthHalfWaves() == 1);
        return oneWave && coverage.isWithin()
                ? Coverage.knee(coverage.value()::share, knowledge.number("damping/knee"))
                : knowledge.number("usual/cover");
    }

    /** Ribs at the ends of one side only are held as clamps there; where both sides have ribs the longer is taken. */
    private static Estimate<Ringing> ringing(Skin skin, Bay shape, int alongEnds, int acrossEnds) {
        return alongEnds >= acrossEnds ? Ringing.betweenRibs(skin, shape, alongEnds)
                : Ringing.betweenRibs(skin, turned(shape), acrossEnds);
    }

    private static Bay turned(Bay shape) {
        return new Bay(shape.width(), shape.length(), shape.widthCurvature(), shape.lengthCurvature());
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
