package unthrum.effect;

import java.util.List;
import unthrum.facts.Place;
import unthrum.physics.Band;
import unthrum.physics.Estimate;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;

/**
 * What damping does to a bay's own resonance.
 *
 * @param coverage of the bay's area by damping; 0 where none lies
 * @param response or why it cannot be told
 */
public record BayEffect(Place place, @Measured(Dimension.SHARE) double coverage, Estimate<Response> response) {

    /**
     * @param before first frequency, Hz, from hinged and sliding to clamped and fixed edges
     * @param after  the same with the layers' mass and stiffness
     * @param toldBefore the range before with the error of the formula and of what a fitter reads
     * @param toldAfter  the same of the range after
     * @param at     in winter, in the workshop and at the peak of the place
     */
    public record Response(Band before, Band after, Band toldBefore, Band toldAfter, List<Warmth> at) {

        public Warmth winter() {
            return at.get(0);
        }

        public Warmth room() {
            return at.get(1);
        }

        public Warmth peak() {
            return at.get(2);
        }
    }

    /**
     * The bay at one temperature.
     *
     * @param lossFactor of the first mode over the ways its edges may be held
     * @param quieter    by how many dB the level at the resonance falls, over those ways and over what a bare panel's
     *                   own loss factor may be
     * @param calmer     the same for noise that fills a band: 10 lg of the loss factors instead of 20 lg
     */
    public record Warmth(@Measured(Dimension.TEMPERATURE) double temperature, Range lossFactor,
                         @Measured(Dimension.LEVEL) Range quieter, @Measured(Dimension.LEVEL) Range calmer) {
    }

    public boolean treated() {
        return coverage > 0;
    }
}
