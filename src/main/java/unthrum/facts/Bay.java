package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Tap;

/**
 * The open area between stiffeners, judged by itself. Frequencies run from hinged to clamped edges.
 *
 * @param bareLossFactor as measured on the bare bay; NaN where nobody did
 * @param note the frequency at which it was measured; NaN where none was
 */
public record Bay(
        String panel,
        int number,
        @Measured(Dimension.LENGTH) double length,
        @Measured(Dimension.LENGTH) double width,
        @Measured(Dimension.LENGTH) double span,
        @Measured(Dimension.AREA) double area,
        Tap tap,
        @KnownAs("gauge") @Measured(Dimension.FREQUENCY) double lowest,
        @KnownAs("gauge") @Measured(Dimension.FREQUENCY) double highest,
        @KnownAs("shape") @Measured(Dimension.SHARE) double bendingShare,
        @Measured(Dimension.SHARE) double enoughCover,
        @KnownAs("gauge") @Measured(Dimension.LEVEL) double gain,
        @KnownAs("gauge") @Measured(Dimension.NUMBER) double drive,
        @KnownAs("decay") @Measured(Dimension.NUMBER) double bareLossFactor,
        @KnownAs("decay") @Measured(Dimension.FREQUENCY) double note,
        int worst,
        Set<String> assumed) implements Fact {
    @Override
    public Place place() {
        return new Place(panel, "bay " + number);
    }

    /** The same bay with its rank among all bays of the vehicle, 1 the worst. */
    public Bay ranked(int rank) {
        return new Bay(panel, number, length, width, span, area, tap, lowest, highest, bendingShare, enoughCover, gain,
                drive, bareLossFactor, note, rank, assumed);
    }

    /** The same bay with what was measured on it bare, and what damping can gain by that. */
    public Bay measured(double lossFactor, double frequency, double possible) {
        return new Bay(panel, number, length, width, span, area, tap, lowest, highest, bendingShare, enoughCover,
                possible, drive, lossFactor, frequency, worst, assumed);
    }
}
