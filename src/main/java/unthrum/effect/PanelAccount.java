package unthrum.effect;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import unthrum.facts.Bay;
import unthrum.facts.Place;
import unthrum.facts.Setting;
import unthrum.material.Layer;
import unthrum.material.Material;
import unthrum.physics.ThirdOctave;
import unthrum.survey.Aim;

/**
 * What layups on one panel gain: the one merit by which layers are chosen, shared and ranked, and from which reasons
 * are told. It is the share that a layup takes of what the bare vehicle gives off and lets through, weighed by the
 * client's aims ({@link VehicleAccount}); 0.01 is one per cent. Damping adds to it bay by bay. Not for several threads
 * at once.
 */
public final class PanelAccount {

    private final VehicleAccount vehicle;
    private final PanelAmounts amounts;
    private final Set<Place> closed;
    private final boolean borders;
    private final Map<Way, Double> factors = new LinkedHashMap<>();
    private final double[] shaking = new double[ThirdOctave.HEARD.size()];
    private final double[] airborne = new double[ThirdOctave.HEARD.size()];
    private final Map<Place, Double> bays = new HashMap<>();
    private final Map<Damped, Double> alone = new HashMap<>();
    private final Map<Way.Kind, Double> heats = new EnumMap<>(Way.Kind.class);
    private final double[] shaken;
    private double bare = Double.NaN;

    PanelAccount(VehicleAccount vehicle, PanelAmounts amounts, Set<Place> closed) {
        this.vehicle = vehicle;
        this.amounts = amounts;
        this.closed = closed;
        this.borders = VehicleAccount.borders(amounts.panel());
        for (Way way : vehicle.ways()) {
            double factor = borders ? way.weight() / vehicle.total(way) : 0;
            factors.put(way, factor);
            heats.merge(way.kind(), way.sound().isPresent() ? 0 : factor, Double::sum);
            way.sound().ifPresent(sound -> {
                if (way.kind() == Way.Kind.SHAKEN && sound.shakes(amounts.panel())) {
                    add(shaking, factor * amounts.ear(), sound.shaking());
                } else if (way.kind() == Way.Kind.AIRBORNE) {
                    add(airborne, factor * amounts.panel().area() * (1 - amounts.openShare(closed))
                            * sound.reaching(amounts.panel(), amounts.facts().the(Setting.class)), sound.airborne());
                }
            });
        }
        this.shaken = amounts.sound().shakenBands(shaking);
    }

    private static void add(double[] sum, double factor, double[] values) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * values[i];
        }
    }

    /** What the bare panel gives off, all aims together, with its holes as they are found. */
    public double bare() {
        return value(Layup.NOTHING, Set.of());
    }

    /** What the closing of the holes gains. */
    public double closing() {
        return bare() - value(Layup.NOTHING, closed);
    }

    /** What the closing of one of these holes gains. */
    public double closing(Place hole) {
        return value(Layup.NOTHING, Set.of()) - value(Layup.NOTHING, Set.of(hole));
    }

    /** What a layup gains over the bare panel whose holes are closed. */
    public double gain(Layup layup) {
        Layup cover = layup.withoutDamping();
        double gain = cover(cover);
        for (Laid damping : layup.of(Layer.DAMPING).stream().toList()) {
            Under under = under(cover);
            for (Bay bay : amounts.sound().bays()) {
                double coverage = amounts.sound().coverage(damping, bay);
                gain += coverage > 0 ? under.damping(damping.material(), bay, coverage) : 0;
            }
        }
        return gain;
    }

    /** The same of layers without damping; all aims in one sum, since it is asked of thousands of covers. */
    public double cover(Layup cover) {
        if (Double.isNaN(bare)) {
            bare = all(Layup.NOTHING);
        }
        return bare - all(cover);
    }

    private double all(Layup cover) {
        return amounts.sound().loaded(cover) * PanelSound.dot(shaken, amounts.sound().covered(cover))
                + amounts.sound().airborne(airborne, cover)
                + heat(Way.Kind.HEAT_IN, cover) + heat(Way.Kind.HEAT_OUT, cover) + heat(Way.Kind.WETNESS, cover);
    }

    private double heat(Way.Kind kind, Layup cover) {
        double factor = heats.getOrDefault(kind, 0.0);
        return factor == 0 ? 0 : factor * amounts.of(kind, Optional.empty(), cover, closed, Sureness.ABOUT);
    }

    private double value(Layup layup, Set<Place> shut) {
        double value = 0;
        for (Map.Entry<Way, Double> way : factors.entrySet()) {
            value += way.getValue() * amount(way.getKey(), layup, shut, Sureness.ABOUT);
        }
        return value;
    }

    private double amount(Way way, Layup layup, Set<Place> shut, Sureness how) {
        return amounts.of(way.kind(), way.sound(), layup, shut, how);
    }

    /** The gains of the cover's layers and of damping under it. */
    public Under under(Layup cover) {
        return new Under(cover);
    }

    /** Damping under one cover. */
    public final class Under {
        private final Layup cover;
        private final double[] covered;
        private final double pressing;
        private final boolean floats;
        private final double loaded;
        private double passed = Double.NaN;
        private final Map<Material, Double> underneath = new HashMap<>();
        private final Map<Place, Double> bare = new HashMap<>();

        private Under(Layup cover) {
            this.cover = cover;
            this.covered = amounts.sound().covered(cover);
            this.pressing = amounts.sound().pressing(cover);
            this.floats = cover.has(Layer.DECOUPLER);
            this.loaded = amounts.sound().loaded(cover);
        }

        /** What damping on that part of a bay adds to the cover's gain. */
        public double damping(Material material, Bay bay, double coverage) {
            double shaken = shaken(bay) - shaken(bay, Optional.of(material), coverage);
            return shaken - coverage * bay.area() / amounts.panel().area() * underneath.computeIfAbsent(material,
                    m -> amounts.sound().underneath(airborne, m, cover, Sureness.ABOUT));
        }

        /**
         * More than damping on that part of a bay can add to the cover's gain, and quick to tell: what a cover that
         * weighs on the skin leaves of the shaking, it leaves more of once the skin is heavier; and no more comes out
         * of the air than passes.
         */
        public double most(Material material, Bay bay, double coverage) {
            if (Double.isNaN(passed)) {
                passed = amounts.sound().airborne(airborne, cover);
            }
            double shaken = floats ? shaken(bay) : loaded
                    * (alone(bay, Optional.empty(), 0) - alone(bay, Optional.of(material), coverage));
            return shaken + passed;
        }

        /** What the bay gives off for all aims under this cover. */
        public double shaken(Bay bay) {
            return bare.computeIfAbsent(bay.place(), k -> shaken(bay, Optional.empty(), 0));
        }

        private double shaken(Bay bay, Optional<Material> material, double coverage) {
            return floats ? amounts.sound().shaken(shaking, bay, material, coverage, cover, covered, Sureness.ABOUT)
                    : amounts.sound().loaded(material, coverage, pressing) * alone(bay, material, coverage);
        }
    }

    /** A bay with damping and nothing else on it, kept: most covers float nothing and only weigh on it. */
    private double alone(Bay bay, Optional<Material> material, double coverage) {
        return alone.computeIfAbsent(new Damped(bay.place(), material, coverage),
                d -> amounts.sound().shaken(shaking, bay, material, coverage));
    }

    private record Damped(Place bay, Optional<Material> material, double coverage) {
    }

    /** What the bare bay gives off for all aims. */
    public double shaken(Bay bay) {
        return bays.computeIfAbsent(bay.place(), k -> under(Layup.NOTHING).shaken(bay));
    }

    /** What a layup takes for each of the client's aims that a formula tells, holes closed. */
    public List<PanelGain> gains(Layup layup) {
        List<PanelGain> gains = new ArrayList<>();
        for (Aim aim : vehicle.weights().keySet()) {
            List<Way> ways = factors.keySet().stream().filter(w -> w.aim() == aim).toList();
            if (!ways.isEmpty()) {
                gains.add(gain(aim, ways, layup));
            }
        }
        return gains;
    }

    private PanelGain gain(Aim aim, List<Way> ways, Layup layup) {
        double bare = 0;
        List<Range> taken = new ArrayList<>();
        for (Way way : ways) {
            double part = way.weight() / vehicle.weights().get(aim);
            bare += part * bare(way);
            Range of = taken(way, layup);
            taken.add(new Range(part * of.low(), part * of.about(), part * of.high()));
        }
        return new PanelGain(aim, bare, Range.sum(taken));
    }

    /** The bare panel's share of what the bare vehicle gives off on a way. */
    private double bare(Way way) {
        return borders ? amount(way, Layup.NOTHING, Set.of(), Sureness.ABOUT) / vehicle.total(way) : 0;
    }

    /** What a layup takes of what the bare vehicle gives off on a way, as a share of it. */
    Range taken(Way way, Layup layup) {
        double[] taken = new double[Sureness.values().length];
        double bare = bare(way);
        for (Sureness how : Sureness.values()) {
            taken[how.ordinal()] = bare * share(way, layup, how);
        }
        return Range.of(taken);
    }

    /** The share of its own bare amount that the layup takes on a way. */
    private double share(Way way, Layup layup, Sureness how) {
        double bare = amount(way, Layup.NOTHING, Set.of(), how);
        double share = bare == 0 ? 0 : 1 - amount(way, layup, closed, how) / bare;
        return way.sound().isPresent() || how == Sureness.ABOUT || way.kind() == Way.Kind.WETNESS ? share
                : share * (1 + (how == Sureness.LEAST ? -1 : 1) * amounts.heatError(way.kind(), layup));
    }

    /** Of the whole vehicle. */
    public VehicleAccount vehicle() {
        return vehicle;
    }

    /** The kinds of layer whose gain the formulas tell. */
    public static boolean tells(Layer layer) {
        return switch (layer) {
            case DAMPING, DECOUPLER, BARRIER, INSULATION -> true;
            case HEAT_SHIELD, ABSORBER, WEAR_FACE, SEAL, ANY -> false;
        };
    }
}
