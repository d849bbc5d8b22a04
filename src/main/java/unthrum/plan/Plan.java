package unthrum.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import unthrum.effect.Effects;
import unthrum.facts.Caution;
import unthrum.facts.Conclusion;
import unthrum.facts.Duty;
import unthrum.facts.Question;
import unthrum.material.Layer;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Survey;

/**
 * The plan of a vehicle.
 *
 * @param vehicle  the facts of the vehicle itself
 * @param forAll   conclusions for the job as a whole
 * @param panels   every panel in the survey's order
 * @param shopping what must be bought and what the shelf gives
 * @param totals   mass and money against the limits
 * @param shares   how what there is was shared
 * @param effects  what the layers do, before and after
 */
public record Plan(Survey survey, PanelFacts vehicle, List<Judgement> forAll, List<PlannedPanel> panels,
                   List<Purchase> shopping, Totals totals, Shares shares,
                   Effects effects) {

    public Optional<PlannedPanel> panel(String name) {
        return panels.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /** The work that the job as a whole asks for, as far as it serves what the plan lays and closes. */
    public List<Judgement> duties() {
        return duties(this::comes);
    }

    /** The same for other layers than the plan's. */
    public List<Judgement> duties(Predicate<Layer> laid) {
        return serving(Duty.class, laid);
    }

    public List<Judgement> cautions() {
        return serving(Caution.class, this::comes);
    }

    private boolean comes(Layer layer) {
        return panels.stream().anyMatch(p -> p.layup().has(layer) || layer == Layer.SEAL && !p.closings().isEmpty());
    }

    private List<Judgement> serving(Class<? extends Conclusion> kind, Predicate<Layer> laid) {
        return conclusions(kind).flatMap(j -> j.restingOn(r -> r.rule().serves(laid)).stream()).toList();
    }

    /** What decides over the vehicle as a whole and is not known. */
    public List<Judgement> questions() {
        return conclusions(Question.class).toList();
    }

    private Stream<Judgement> conclusions(Class<? extends Conclusion> kind) {
        return forAll.stream().filter(j -> kind.isInstance(j.conclusion()));
    }
}
