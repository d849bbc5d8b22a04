package unthrum.effect;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.derive.HeardSound;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Fixing;
import unthrum.facts.Heat;
import unthrum.facts.Opening;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Rib;
import unthrum.facts.Room;
import unthrum.facts.Setting;
import unthrum.facts.Surface;
import unthrum.facts.Vehicle;
import unthrum.knowledge.AimEntry.Meter;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Kept;
import unthrum.survey.Aim;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * The yardstick of all gains: what the bare vehicle gives off and lets through for each of the client's aims. What a
 * layup takes of it is a share, so that sound, heat and wetness have one scale, and the shares of panels add up. The
 * first aim counts one, the second a half, the third a third (common practice, no source), and those that a formula tells
 * all together one.
 */
public final class VehicleAccount {

    /** More panels, and ways in which one is tried, are seldom asked of again. */
    private static final int MOST_KEPT = 500;

    private final Knowledge knowledge;
    private final Vehicle vehicle;
    private final Map<Aim, Double> weights = new LinkedHashMap<>();
    private final Map<Way, Double> totals = new LinkedHashMap<>();
    private final double area;
    private final Kept<PanelFacts, PanelSound> sounds;
    private final Kept<PanelFacts, HeatGain> heats;

    private VehicleAccount(Knowledge knowledge, Survey survey, List<PanelFacts> bundles) {
        this.knowledge = knowledge;
        this.vehicle = bundles.get(0).the(Vehicle.class);
        this.sounds = new Kept<>(MOST_KEPT, facts -> new PanelSound(knowledge, facts));
        this.heats = new Kept<>(MOST_KEPT, facts -> new HeatGain(knowledge, vehicle, facts));
        List<PanelFacts> panels = bundles.subList(1, bundles.size());
        this.area = panels.stream().mapToDouble(p -> p.the(Panel.class).area()).sorted().sum();
        List<Aim> aims = survey.aims().isEmpty() ? List.of(Aim.ROAD_DRUMMING) : survey.aims();
        List<PanelAmounts> amounts = panels.stream().filter(p -> borders(p.the(Panel.class)))
                .map(this::amounts).toList();
        Map<Aim, Map<Way.Kind, Double>> found = new LinkedHashMap<>();
        double all = 0;
        for (int i = 0; i < aims.size(); i++) {
            Map<Way.Kind, Double> totals = totals(aims.get(i), survey, amounts);
            if (!totals.isEmpty()) {
                found.put(aims.get(i), totals);
                weights.put(aims.get(i), 1.0 / (i + 1));
                all += 1.0 / (i + 1);
            }
        }
        double sum = all;
        weights.replaceAll((aim, weight) -> weight / sum);
        found.forEach((aim, totals) -> share(aim, survey, totals));
    }

    /** @param bundles the facts of the vehicle, then those of its panels */
    public static VehicleAccount of(Knowledge knowledge, Survey survey, List<PanelFacts> bundles) {
        return new VehicleAccount(knowledge, survey, bundles);
    }

    /** Whether it bounds the room people sit in; a bonnet keeps its sound, heat and cold outside. */
    static boolean borders(Panel panel) {
        return panel.zone() != Zone.BONNET;
    }

    /** What the bare vehicle gives off on each way of an aim; nothing for ways on which nothing comes. */
    private Map<Way.Kind, Double> totals(Aim aim, Survey survey, List<PanelAmounts> panels) {
        Optional<HeardSound> sound = HeardSound.of(aim, survey, knowledge);
        Map<Way.Kind, Double> totals = new EnumMap<>(Way.Kind.class);
        for (Way.Kind kind : parts(aim).keySet()) {
            double total = panels.stream().mapToDouble(p -> p.bare(kind, sound)).sorted().sum();
            if (total > 0) {
                totals.put(kind, total);
            }
        }
        return totals;
    }

    /** A way on which nothing comes leaves its part to the other. */
    private void share(Aim aim, Survey survey, Map<Way.Kind, Double> totals) {
        Map<Way.Kind, Double> parts = parts(aim);
        double told = totals.keySet().stream().mapToDouble(parts::get).sum();
        Optional<HeardSound> sound = HeardSound.of(aim, survey, knowledge);
        totals.forEach((kind, total) -> this.totals.put(
                new Way(aim, kind, weights.get(aim) * parts.get(kind) / told, sound), total));
    }

    private Map<Way.Kind, Double> parts(Aim aim) {
        Meter meter = knowledge.aim(aim).measuredBy();
        return switch (meter) {
            case SOUND -> {
                double shaken = knowledge.aim(aim).heard().orElseThrow().shaken().si();
                yield shaken < 1 ? Map.of(Way.Kind.SHAKEN, shaken, Way.Kind.AIRBORNE, 1 - shaken)
                        : Map.of(Way.Kind.SHAKEN, shaken);
            }
            case HEAT_IN -> Map.of(Way.Kind.HEAT_IN, 1.0);
            case HEAT_OUT -> Map.of(Way.Kind.HEAT_OUT, 1.0);
            case WETNESS -> Map.of(Way.Kind.WETNESS, 1.0);
            case TRADE -> Map.of();
        };
    }

    /** The client's aims that a formula tells, in their order, with what each counts. */
    public Map<Aim, Double> weights() {
        return weights;
    }

    /** What one more kilogram must take of all that the client wants rid of: the larger the vehicle, the less. */
    public double leastForKilogram() {
        return knowledge.number("worth/kilogram") / area;
    }

    /** The same for one more unit of money. */
    public double leastForMoney() {
        return knowledge.number("worth/money") / area;
    }

    VehicleEffect.Least least() {
        return new VehicleEffect.Least(leastForKilogram(), leastForMoney());
    }

    Meter meter(Aim aim) {
        return knowledge.aim(aim).measuredBy();
    }

    Set<Way> ways() {
        return totals.keySet();
    }

    /** What the bare vehicle gives off or lets through on a way. */
    double total(Way way) {
        return totals.get(way);
    }

    /** Of all panels, m². */
    public double area() {
        return area;
    }

    /** Whether a formula tells what an aim gains. */
    public boolean tells(Aim aim) {
        return weights.containsKey(aim);
    }

    /** What the gains on a panel are computed from. */
    public List<Object> read(PanelFacts facts) {
        List<Object> read = new ArrayList<>(facts.facts().stream().filter(f -> f instanceof Panel || f instanceof Bay
                || f instanceof Rib || f instanceof Heat || f instanceof Setting || f instanceof Opening
                || f instanceof Fixing).toList());
        boolean heat = totals.keySet().stream().anyMatch(w -> w.sound().isEmpty());
        facts.facts().stream().filter(f -> heat && (f instanceof Room || f instanceof Surface)).forEach(read::add);
        return read;
    }

    /** @param closed the openings that are closed when the layers lie */
    public PanelAccount panel(PanelFacts facts, Set<Place> closed) {
        return new PanelAccount(this, amounts(facts), closed);
    }

    private PanelAmounts amounts(PanelFacts facts) {
        return new PanelAmounts(knowledge, facts, sounds.of(PanelSound.read(facts)), heats.of(HeatGain.read(facts)));
    }
}
