package unthrum.reasoning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import unthrum.effect.Layup;
import unthrum.effect.VehicleAccount;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Fixing;
import unthrum.facts.Heat;
import unthrum.facts.Hold;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Question;
import unthrum.facts.Rib;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.facts.Surface;
import unthrum.knowledge.Knowledge;
import unthrum.material.Catalogue;
import unthrum.material.Figures;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.derive.PanelFacts;
import unthrum.reasoning.engine.Judgement;
import unthrum.survey.Overrule;

/** Decides one panel from its case: weighs the wants, searches the layup, and gives the verdict. */
public final class Advisor {

    /** The kinds of fact that the choice of a layup reads. */
    public static final Set<Class<? extends Fact>> WEIGHED = Set.of(Panel.class, Bay.class, Rib.class, Heat.class,
            Setting.class, Opening.class, Fixing.class, Room.class, Surface.class);

    /**
     * By the trade's weight a hole counts as so much of the panel, m², beside the sound that a formula tells. Common
     * practice, no source.
     */
    private static final double HOLE = 0.1;

    private final Knowledge knowledge;
    private final Catalogue catalogue;
    private final VehicleAccount account;
    private final SearchMemory tried = new SearchMemory();

    /** @param account what the bare vehicle gives off: the yardstick of every gain */
    public Advisor(Knowledge knowledge, Catalogue catalogue, VehicleAccount account) {
        this.knowledge = knowledge;
        this.catalogue = catalogue;
        this.account = account;
    }

    /**
     * @param judgements all conclusions on the panel and on the vehicle
     * @param overrules  the rules that the fitter sets aside on the panel
     */
    public PanelAdvice advise(PanelFacts facts, List<Judgement> judgements, List<Overrule> overrules) {
        Case panel = theCase(facts, judgements, overrules);
        List<WeighedWant> wants = WeighedWant.of(panel, knowledge);
        LayupSearch search = search(panel, wants);
        return advice(panel, wants, Found.of(search), search::options);
    }

    /**
     * The same advice without the options that a plan shares among panels: for a panel as it might be in many ways. Not
     * for several threads at once.
     */
    public PanelAdvice tryOut(PanelFacts facts, List<Judgement> judgements, List<Overrule> overrules) {
        Case panel = theCase(facts, judgements, overrules);
        List<WeighedWant> wants = WeighedWant.of(panel, knowledge);
        return advice(panel, wants, tried.of(panel, wants, weighs(facts), () -> search(panel, wants)),
                () -> Options.NONE);
    }

    private LayupSearch search(Case panel, List<WeighedWant> wants) {
        return new LayupSearch(panel, wants, account.panel(panel.facts(), closed(wants)), knowledge, catalogue);
    }

    /** The holes that are closed when the layers lie. */
    private static Set<Place> closed(List<WeighedWant> wants) {
        return wants.stream().filter(w -> w.layer() == Layer.SEAL && w.stands()).map(WeighedWant::place)
                .collect(Collectors.toSet());
    }

    private static Case theCase(PanelFacts facts, List<Judgement> judgements, List<Overrule> overrules) {
        List<Overruled> overruled = overrules.stream().map(o -> Overruled.of(o, judgements)).toList();
        return new Case(facts, Overruled.without(overruled, judgements), overruled);
    }

    private PanelAdvice advice(Case panel, List<WeighedWant> wants, Found found,
                               Supplier<Options> options) {
        boolean held = panel.own(Hold.class).stream().anyMatch(h -> h.conclusion().place().isWholePanel())
                && wants.stream().anyMatch(w -> w.stands() || w.vetoes().stream().allMatch(Judgement::restsOnAssumption));
        Layup layup = held ? Layup.NOTHING : found.best().layup();
        boolean ask = !panel.own(Question.class).isEmpty() && new Undecided(panel, wants, found.rejected()).yes();
        return new PanelAdvice(verdict(held, layup, ask), layup, closings(panel, wants), panel, wants, found,
                held ? Options.NONE : options.get());
    }

    /**
     * What the choice of a layup reads of a panel's facts beside the conclusions on it. Where these stay the same, only
     * conclusions can move the choice.
     */
    public List<Object> weighs(PanelFacts facts) {
        return account.read(facts);
    }

    private static Verdict verdict(boolean held, Layup layup, boolean ask) {
        if (held) {
            return Verdict.HOLD;
        }
        return (ask ? Verdict.ASK : Verdict.LEAVE_BARE).with(layup);
    }

    private List<Closing> closings(Case panel, List<WeighedWant> wants) {
        List<Closing> closings = new ArrayList<>();
        Limits limits = new Limits(panel, knowledge);
        for (WeighedWant want : wants) {
            if (want.layer() == Layer.SEAL && want.stands()) {
                opening(panel, want.place()).ifPresent(o -> closings.add(new Closing(want, o, piece(o, limits),
                        closing(panel.facts(), want))));
            }
        }
        return closings;
    }

    private double closing(PanelFacts facts, WeighedWant want) {
        return account.panel(facts, Set.of()).closing(want.place()) + knowledge.number("worth/trade")
                * want.weight() / knowledge.number("weight/strong") * HOLE / account.area();
    }

    private static Optional<Opening> opening(Case panel, Place place) {
        return panel.facts().all(Opening.class).filter(o -> o.place().equals(place)).findFirst();
    }

    /** The cheapest piece made for such a hole that is large enough and breaks no limit; the smaller of equals. */
    private Optional<Material> piece(Opening opening, Limits limits) {
        return catalogue.of(Layer.SEAL).stream().filter(m -> m.closes().orElse(List.of()).contains(opening.kind()))
                .filter(m -> m.size().stream().allMatch(side -> side.si() >= opening.size())
                        || m.form() == Material.Form.ROLL && m.size().get(0).si() >= opening.size())
                .filter(m -> limits.brokenBy(m).isEmpty())
                .min(Comparator.comparing((Material m) -> m.price().amount().doubleValue() / m.inPack())
                        .thenComparing(m -> m.size().get(0).si() * m.size().get(1).si()).thenComparing(Figures.ORDER));
    }
}
