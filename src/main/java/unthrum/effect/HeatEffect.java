package unthrum.effect;

import java.util.List;
import unthrum.material.Material;
import unthrum.physics.Estimate;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What the layers do against heat and cold, with the trim back on before and after.
 *
 * @param summer heat that comes in when the sun or a hot neighbour heats the metal, or why there is none
 * @param winter heat that is lost to the coldest air
 * @param atPeak how hot each layer gets at the peak of its place, from the metal inward
 * @param dew    water on cold faces, or why it cannot be told
 */
public record HeatEffect(Estimate<Flow> summer, Estimate<Flow> winter, List<Heated> atPeak, Estimate<Dew> dew) {

    /**
     * Heat flow on average over the panel in the weather stated, always counted in the direction it runs.
     *
     * @param uncertainty share by which the less certain of both flows may be off either way
     */
    public record Flow(
            @Measured(Dimension.HEAT_FLOW) double bare,
            @Measured(Dimension.HEAT_FLOW) double treated,
            @Measured(Dimension.AREA) double area,
            @Measured(Dimension.SHARE) double uncertainty) {

        /** W through the whole panel. */
        public double wattsBare() {
            return bare * area;
        }

        public double wattsTreated() {
            return treated * area;
        }
    }

    /** A layer at the peak of its place: its hotter face against what it bears. */
    public record Heated(Material material, @Measured(Dimension.TEMPERATURE) double face,
                         @Measured(Dimension.TEMPERATURE) double bears) {

        /** K; negative where it is too hot for the layer. */
        public double margin() {
            return bears - face;
        }
    }

    /**
     * Water from room air in the coldest weather.
     *
     * @param faces every face under the fullest stack, from the metal's inner side inward
     */
    public record Dew(@Measured(Dimension.TEMPERATURE) double dewPoint, Wet bare, Wet treated, List<Face> faces) {

        /** The coldest face that room air reaches where the stack is fullest. */
        public double coldestCovered() {
            return faces.stream().filter(Face::reached).mapToDouble(Face::temperature).min().orElseThrow();
        }
    }

    /**
     * How wet a panel gets, bare strips among it.
     *
     * @param coldest face that room air reaches, in the coldest air
     * @param share   of the panel likely to be wet then: whether a face near the dew point is wet is not sure
     * @param depth   K by which such faces lie below the dew point, on average over the whole panel
     * @param hours   share of the winter's hours in which such a face is wet, on average over the whole panel; low and
     *                high where the faces are warmer or colder than reckoned, or the air drier or damper
     */
    public record Wet(@Measured(Dimension.TEMPERATURE) double coldest, @Measured(Dimension.SHARE) double share,
                      @Measured(Dimension.NUMBER) double depth, @Measured(Dimension.SHARE) Range hours) {
    }

    /**
     * A face between layers.
     *
     * @param behind  what lies outward of it: 'metal', a material, or 'air gap'
     * @param margin  K above the dew point of the room air
     * @param reached whether room air gets there: not behind a bonded sheet without open pores
     */
    public record Face(String behind, @Measured(Dimension.TEMPERATURE) double temperature,
                       @Measured(Dimension.NUMBER) double margin, boolean reached) {

        public boolean wet() {
            return reached && margin < 0;
        }
    }
}
