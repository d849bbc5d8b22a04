package unthrum.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.facts.AimedAt;
import unthrum.facts.Bay;
import unthrum.facts.Fact;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Moisture;
import unthrum.survey.Survey;
import unthrum.survey.Use;
import unthrum.survey.VehicleEntry;
import unthrum.survey.VehicleEntry.Indoor;
import unthrum.survey.Zone;

/** Turns a survey into facts: one bundle for the vehicle, one for each panel, in the survey's order. */
public final class Derivation {

    private final Knowledge knowledge;

    public Derivation(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** The facts of the whole vehicle, its own first; bays carry their rank among all bays. */
    public List<PanelFacts> of(Survey survey) {
        PanelFacts vehicle = vehicle(survey);
        PanelDeriver deriver = panels(survey, vehicle);
        List<PanelFacts> bundles = new ArrayList<>();
        bundles.add(vehicle);
        survey.panels().forEach(p -> bundles.add(deriver.derive(p)));
        return ranked(bundles);
    }

    /** Derives single panels of a vehicle, again and again; bays come without their rank among all bays. */
    public PanelDeriver panels(Survey survey, PanelFacts vehicle) {
        return new PanelDeriver(knowledge, vehicle.the(Vehicle.class),
                Demand.of(survey, new Answers(knowledge, Zone.FLOOR, new LinkedHashMap<>())));
    }

    /** The facts of the vehicle itself. */
    public PanelFacts vehicle(Survey survey) {
        VehicleEntry entry = survey.vehicle();
        Map<String, Assumed> taken = new LinkedHashMap<>();
        Answers answers = new Answers(knowledge, Zone.FLOOR, taken);
        double indoor = answers.quantity(entry.indoor().map(Indoor::temperature), "indoor", "indoor temperature");
        double humidity = answers.quantity(entry.indoor().map(Indoor::humidity), "humidity", "indoor humidity");
        double dewPoint = Moisture.dewPoint(indoor, humidity).orElse(Double.NaN);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Vehicle(entry.body(), entry.drive(), entry.use().contains(Use.LIVED_IN),
                entry.use().contains(Use.LOAD_CARRYING), entry.use().contains(Use.DAILY),
                entry.use().contains(Use.STRIP_DOWN), answers.quantity(entry.payloadLeft(), "payloadLeft"),
                answers.quantity(entry.coldest(), "coldest"), indoor, humidity, dewPoint, answers.assumed()));
        for (int i = 0; i < survey.aims().size(); i++) {
            facts.add(new AimedAt(survey.aims().get(i), i + 1));
        }
        return new PanelFacts("", facts, taken, List.of());
    }

    private static List<PanelFacts> ranked(List<PanelFacts> bundles) {
        List<Bay> worstFirst = bundles.stream().flatMap(b -> b.all(Bay.class))
                .sorted(Comparator.comparing(Bay::drive).reversed().thenComparing(Bay::panel).thenComparing(Bay::number))
                .toList();
        Map<Bay, Integer> ranks = new LinkedHashMap<>();
        for (int i = 0; i < worstFirst.size(); i++) {
            ranks.put(worstFirst.get(i), i + 1);
        }
        return bundles.stream().map(b -> new PanelFacts(b.panel(),
                b.facts().stream().map(f -> f instanceof Bay bay ? bay.ranked(ranks.get(bay)) : f).toList(),
                b.assumptions(), b.modes())).toList();
    }
}
