package unthrum.reasoning;

import java.util.List;
import unthrum.effect.Layup;
import unthrum.effect.Patch;
import unthrum.facts.Pairing;
import unthrum.material.Layer;
import unthrum.material.Material;

/**
 * What may be laid on one panel, just as the layup search sees it: at most one offer of each layer, inside the bounds
 * of the stack, the panel's mass and the pairings. Sharing among panels chooses from these.
 *
 * @param stack    the thickest stack in m, infinite when nothing bounds it
 * @param mass     the most that the panel may gain in kg, infinite when nothing bounds it
 * @param alike    the layups that serve as well as the best one, as far as a fitter could tell, the best first
 */
public record Options(List<Offer> offers, double stack, double mass, List<Pairing> pairings, List<Layup> alike) {

    /** A quarter of a weight point: less than that no fitter and no client could tell. Common practice, no source. */
    public static final double ALIKE = 0.25;

    /** A panel that gets nothing. */
    public static final Options NONE =
            new Options(List.of(), Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, List.of(), List.of());

    /** A material that no limit rejects, and all that could be covered with it. */
    public record Offer(Material material, double merit, List<Part> parts) {
        public Layer layer() {
            return material.layer();
        }
    }

    /**
     * One place that a layer could cover.
     *
     * @param patch   at the cover that the rules ask for
     * @param weight  of its want
     * @param safety  whether a rule of safety asks for it
     * @param returns the share of the effect that each equal piece of the patch reaches, the last 1; one piece when
     *                it is all or nothing
     */
    public record Part(Patch patch, double weight, boolean safety, List<Double> returns) {
    }
}
