package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Body;
import unthrum.survey.Drive;

/** The vehicle as a whole. */
public record Vehicle(
        Body body,
        Drive drive,
        boolean livedIn,
        boolean loadCarrying,
        boolean daily,
        boolean stripDown,
        @Measured(Dimension.MASS) double payloadLeft,
        @Measured(Dimension.TEMPERATURE) double coldest,
        @KnownAs("indoor temperature") @Measured(Dimension.TEMPERATURE) double indoor,
        @KnownAs("indoor humidity") @Measured(Dimension.SHARE) double humidity,
        @Measured(Dimension.TEMPERATURE) double dewPoint,
        Set<String> assumed) implements Fact {
    @Override
    public String panel() {
        return "";
    }

    @Override
    public Place place() {
        return Place.VEHICLE;
    }

    /** Whether anything aboard burns fuel to drive. */
    public boolean hasEngine() {
        return drive != Drive.ELECTRIC;
    }

    /** Whether orange cables and a traction battery are aboard. */
    public boolean hasHighVoltage() {
        return drive == Drive.ELECTRIC || drive == Drive.HYBRID;
    }
}
