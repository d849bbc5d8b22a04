package unthrum.derive;

import java.util.Optional;
import unthrum.facts.Panel;
import unthrum.physics.TaperedRoll;
import unthrum.reading.Quantity;
import unthrum.survey.Curve;
import unthrum.survey.PanelEntry.Shape;

/**
 * How a panel is curved, as the survey tells it.
 *
 * @param rise of a crown alike both ways, over the shorter side, or of a roll at its near end, m
 * @param along rise of a crown over its length, where told apart, m
 * @param across the same over its width, m
 * @param far rise of a roll at its far end, m
 */
record PanelForm(Curve curve, double length, double width, double rise, Optional<Double> along,
                 Optional<Double> across, Optional<Double> far) {

    static PanelForm of(Panel panel, Optional<Shape> shape) {
        return new PanelForm(panel.curve(), panel.length(), panel.width(), panel.rise(),
                shape.flatMap(Shape::riseAlong).map(Quantity::si), shape.flatMap(Shape::riseAcross).map(Quantity::si),
                shape.flatMap(Shape::farRise).map(Quantity::si));
    }

    /** The same with every rise read that much higher, or lower but not below flat. */
    PanelForm raised(double by) {
        return new PanelForm(curve, length, width, Math.max(0, rise + by), along.map(r -> Math.max(0, r + by)),
                across.map(r -> Math.max(0, r + by)), far.map(r -> Math.max(0, r + by)));
    }

    /** The evenly curved panel; of a roll that tapers the one of its mean rise. */
    unthrum.physics.Bay even() {
        return switch (curve) {
            case FLAT -> unthrum.physics.Bay.flat(length, width);
            case CROWNED -> along.isPresent() && across.isPresent()
                    ? unthrum.physics.Bay.curved(length, width, along.get(), across.get())
                    : unthrum.physics.Bay.crowned(length, width, rise);
            case ROLLED -> unthrum.physics.Bay.rolled(length, width, (rise + far.orElse(rise)) / 2);
        };
    }

    /** A part of the panel has the curvature of the whole. */
    unthrum.physics.Bay part(double partLength, double partWidth) {
        unthrum.physics.Bay whole = even();
        return new unthrum.physics.Bay(partLength, partWidth, whole.lengthCurvature(), whole.widthCurvature());
    }

    /** As round everywhere as where it is flattest, or roundest: a roll that tapers ends up even. */
    PanelForm even(boolean roundest) {
        double end = far.orElse(rise);
        return new PanelForm(curve, length, width, roundest ? Math.max(rise, end) : Math.min(rise, end), along, across,
                Optional.empty());
    }

    /** The roll from a place along it to another, if it tapers. */
    Optional<TaperedRoll> tapered(double from, double to) {
        return curve == Curve.ROLLED && far.isPresent() && far.get() != rise
                ? Optional.of(new TaperedRoll(to - from, width, riseAt(from), riseAt(to))) : Optional.empty();
    }

    private double riseAt(double place) {
        return rise + (far.orElse(rise) - rise) * place / length;
    }
}
