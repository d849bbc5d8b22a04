package unthrum.reasoning.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import unthrum.facts.Fact;
import unthrum.facts.Place;
import unthrum.facts.Vehicle;
import unthrum.knowledge.RuleCard;
import unthrum.knowledge.Wanting;
import unthrum.material.Catalogue;
import unthrum.material.Layer;
import unthrum.reasoning.Advisor;
import unthrum.reasoning.PanelAdvice;
import unthrum.derive.Derivation;
import unthrum.derive.PanelDeriver;
import unthrum.derive.PanelFacts;
import unthrum.effect.VehicleAccount;
import unthrum.reasoning.engine.RuleEngine;
import unthrum.reasoning.engine.RuleSession;
import unthrum.reasoning.engine.Silence;
import unthrum.reasoning.engine.Truths;
import unthrum.survey.Drive;
import unthrum.survey.Overrule;
import unthrum.survey.PanelEntry;
import unthrum.survey.Survey;

/**
 * Judges panels of one vehicle again and again, one at a time, as they are or as they might be. No rule joins two
 * panels, so the vehicle and one panel give the answer that the whole vehicle gives. Not for several threads at once.
 */
public final class PanelTrial implements AutoCloseable {

    private final RuleEngine engine;
    private final Catalogue catalogue;
    private final Survey survey;
    private final Truths truths;
    private final Wanting wanting;
    private final Advisor advisor;
    private final PanelFacts vehicle;
    private final VehicleAccount account;
    private final PanelDeriver deriver;
    private final RuleSession session;
    private final Map<PanelEntry, PanelAdvice> judged = new HashMap<>();
    private String before = "";
    private PanelTrial twin;

    public PanelTrial(RuleEngine engine, Catalogue catalogue, Survey survey) {
        this(engine, catalogue, survey, new Derivation(engine.knowledge()).of(survey));
    }

    private PanelTrial(RuleEngine engine, Catalogue catalogue, Survey survey, List<PanelFacts> surveyed) {
        this(engine, catalogue, survey, surveyed.get(0), VehicleAccount.of(engine.knowledge(), survey, surveyed));
    }

    private PanelTrial(RuleEngine engine, Catalogue catalogue, Survey survey, PanelFacts vehicle,
                       VehicleAccount account) {
        this.engine = engine;
        this.catalogue = catalogue;
        this.survey = survey;
        this.vehicle = vehicle;
        this.account = account;
        this.truths = engine.truths();
        this.wanting = engine.knowledge().wanting();
        this.advisor = new Advisor(engine.knowledge(), catalogue, account);
        this.deriver = new Derivation(engine.knowledge()).panels(survey, vehicle);
        this.session = engine.open();
        session.state("", vehicle.facts());
    }

    Truths truths() {
        return truths;
    }

    /** The rules that can want a layer. */
    List<RuleCard> wanting(Layer layer) {
        return wanting.of(layer);
    }

    Advisor advisor() {
        return advisor;
    }

    List<Fact> vehicle() {
        return vehicle.facts();
    }

    /** The facts of a panel that can be turned. */
    List<Lever> levers(PanelEntry panel) {
        return Levers.of(engine.knowledge(), drive(), panel, facts(panel));
    }

    /** What drives the vehicle. */
    Drive drive() {
        return vehicle.the(Vehicle.class).drive();
    }

    PanelFacts facts(PanelEntry panel) {
        return deriver.derive(panel);
    }

    /** The advice on a panel. */
    public PanelAdvice advise(PanelEntry panel) {
        PanelAdvice known = panel.panel().equals(before) ? judged.get(panel) : null;
        if (known == null) {
            known = advise(facts(panel), panel.overrules().orElse(List.of()));
            judged.put(panel, known);
        }
        return known;
    }

    private PanelAdvice advise(PanelFacts facts, List<Overrule> overrules) {
        state(facts);
        return advisor.tryOut(facts, session.judgements(c -> true), overrules);
    }

    private void state(PanelFacts facts) {
        if (!before.isEmpty() && !before.equals(facts.panel())) {
            session.state(before, List.of());
            judged.clear();
        }
        before = facts.panel();
        session.state(facts.panel(), facts.facts());
    }

    /** Why a rule stays silent on a panel, the nearest miss first. */
    public List<Silence> silences(String rule, PanelFacts facts, Place place) {
        state(facts);
        return session.silences(rule, place);
    }

    /** A second trial of the same vehicle, for another thread; closed with this one. */
    PanelTrial twin() {
        if (twin == null) {
            twin = new PanelTrial(engine, catalogue, survey, vehicle, account);
        }
        return twin;
    }

    @Override
    public void close() {
        if (twin != null) {
            twin.close();
        }
        session.close();
    }
}
