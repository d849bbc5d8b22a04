package unthrum.facts;

import java.util.Set;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.survey.Curve;
import unthrum.survey.Metal;
import unthrum.survey.Zone;

/** One skin area between its edges. */
public record Panel(
        String name,
        Zone zone,
        Metal metal,
        @Measured(Dimension.LENGTH) double gauge,
        @Measured(Dimension.LENGTH) double length,
        @Measured(Dimension.LENGTH) double width,
        @Measured(Dimension.AREA) double area,
        @KnownAs("shape") Curve curve,
        @Measured(Dimension.LENGTH) double rise,
        @KnownAs("ribs") int bays,
        @Measured(Dimension.SURFACE_DENSITY) double skinWeight,
        Set<String> assumed) implements Fact {
    @Override
    public String panel() {
        return name;
    }
}
