package unthrum.job;

import java.util.List;
import java.util.Optional;
import unthrum.facts.Caution.Danger;
import unthrum.facts.Duty.Work;
import unthrum.material.Layer;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;

/**
 * A kind of step of a job.
 *
 * @param work         the duties that it takes up
 * @param rules        rules whose duties it takes up before any other kind that does such work
 * @param layers       the layers that it lays
 * @param found        what brings it about beside duties and layers
 * @param with         the kind on whose panels it is done, whatever else asks for it
 * @param areas        the areas in which it is done; all when absent
 * @param dangersWhenGlued what it runs into beside, where contact adhesive is used
 * @param whileHeld    whether it is done on panels that wait
 * @param standsInside whether whoever does it stands or kneels in the vehicle
 * @param people       how many it takes at least; one when absent
 * @param rulesForTwo  rules that ask for a second person
 */
public record StepKind(String step, Stage stage, String does, Optional<List<Work>> work, Optional<List<String>> rules,
                       Optional<List<Layer>> layers, Optional<List<Found>> found, Optional<String> with,
                       Optional<List<String>> areas,
                       Optional<List<Danger>> dangers, Optional<List<Danger>> dangersWhenGlued,
                       Optional<Boolean> whileHeld, Optional<Boolean> standsInside,
                       Optional<Integer> people, Optional<List<String>> rulesForTwo, Optional<List<String>> tools,
                       Optional<List<String>> consumables, Optional<List<Wait>> waits, Labour labour, String source) {

    /** What a panel or the vehicle has. */
    public enum Found { LAYER, CLOSING, SERVICE_OPENING, COVER, DRAIN, HOLD, QUESTION, JOB, DANGER }

    /**
     * What must wait after it, or within it before a piece is placed.
     *
     * @param least a threshold; absent where no number can be given
     * @param rules only where one of these asks for the step
     * @param glued only where a material of the step is held by contact adhesive
     */
    public record Wait(String until, Optional<String> least, Optional<String> most, Optional<List<String>> rules,
                       Optional<Boolean> glued) {
    }

    /** What it takes of one pair of hands: for the step, for each panel, and for each square metre. */
    public record Labour(@Measured(Dimension.TIME) Optional<Quantity> once,
                         @Measured(Dimension.TIME) Optional<Quantity> each,
                         @Measured(Dimension.TIME) Optional<Quantity> squareMetre, String source) {

        /** In s. */
        double seconds(int panels, double area) {
            return si(once) + panels * si(each) + area * si(squareMetre);
        }

        private static double si(Optional<Quantity> time) {
            return time.map(Quantity::si).orElse(0.0);
        }
    }

    boolean does(Work one) {
        return work.orElse(List.of()).contains(one);
    }

    boolean isDoneIn(Area area) {
        return areas.map(names -> names.contains(area.area())).orElse(true);
    }

    boolean isAskedBy(String rule) {
        return rules.orElse(List.of()).contains(rule);
    }

    public boolean lays(Layer layer) {
        return layers.orElse(List.of()).contains(layer);
    }

    /** Whether it leaves a layer behind. */
    public boolean lays() {
        return layers.isPresent();
    }

    /** Whether it decides on panels that wait. */
    public boolean decides() {
        return comesOf(Found.HOLD);
    }

    /** Whether it answers what the survey leaves open. */
    public boolean measures() {
        return comesOf(Found.QUESTION);
    }

    boolean comesOf(Found one) {
        return found.orElse(List.of()).contains(one);
    }

    /** @param glued whether contact adhesive is used in it */
    boolean runsInto(Danger danger, boolean glued) {
        return dangers.orElse(List.of()).contains(danger)
                || glued && dangersWhenGlued.orElse(List.of()).contains(danger);
    }

    /** Whether it is ticked off panel by panel, as its labour is counted. */
    public boolean isPanelByPanel() {
        return labour.each().isPresent();
    }

    boolean isDoneWhileHeld() {
        return whileHeld.orElse(false);
    }

    public boolean isDoneInside() {
        return standsInside.orElse(false);
    }
}
