package unthrum.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Fixing;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.material.Material;

/**
 * What a panel whose holes are closed gives off shaken and lets through the air, band by band, bare and under any
 * layup; in units that only add up. Each answer is kept, since layups are tried by the hundred. For any number of
 * threads.
 */
final class PanelSound {

    /** Broad-band forces shake a heavier plate less: mean square velocity by the mass to this power (SEA: point-driven
     * power over modal energy, n/m² with n rising with √m; Lyon and DeJong, from memory). */
    private static final double HEAVIER = 1.5;

    /** The part of what more mass on the same leaf brings, in dB, that is unsure. From memory. */
    private static final double UNSURE_PART = 0.3;

    private final Knowledge knowledge;
    private final Panel panel;
    private final List<Bay> bays;
    private final double peak;
    private final WallSound wall;
    private final BayPower power;
    private final Map<List<Material>, double[]> transmissions = new ConcurrentHashMap<>();
    private final Map<List<Material>, double[]> covers = new ConcurrentHashMap<>();
    private final Map<Shaken, double[]> powers = new ConcurrentHashMap<>();

    private record Shaken(Bay bay, Optional<Material> damping, double coverage, Sureness how) {
    }

    PanelSound(Knowledge knowledge, PanelFacts read) {
        this.knowledge = knowledge;
        this.panel = read.the(Panel.class);
        this.bays = read.all(Bay.class).toList();
        this.peak = read.the(Heat.class).peak();
        this.wall = new WallSound(knowledge, read);
        this.power = new BayPower(read);
    }

    /** What of a panel's facts it reads: the same of these, the same sound. */
    static PanelFacts read(PanelFacts facts) {
        return facts.only(Set.of(Panel.class, Bay.class, Fixing.class, Heat.class));
    }

    double shaken(double[] counts, Layup layup, Sureness how) {
        Optional<Laid> damping = layup.of(Layer.DAMPING);
        Layup cover = layup.withoutDamping();
        double[] covered = covered(cover);
        double sum = 0;
        for (Bay bay : bays) {
            double coverage = damping.map(d -> coverage(d, bay)).orElse(0.0);
            sum += shaken(counts, bay, damping.filter(d -> coverage > 0).map(Laid::material), coverage, cover, covered,
                    how);
        }
        return sum;
    }

    List<Bay> bays() {
        return bays;
    }

    /** What one bay gives off, counted, with damping on it and nothing else. */
    double shaken(double[] counts, Bay bay, Optional<Material> damping, double coverage) {
        return dot(counts, power(bay, damping, coverage, Sureness.ABOUT));
    }

    /** How much of a shaking the mass of a cover leaves over a damping sheet. */
    double loaded(Optional<Material> damping, double coverage, double pressing) {
        double mass = panel.skinWeight() + damping.map(d -> d.surfaceDensity().si() * coverage).orElse(0.0);
        return Math.pow(mass / (mass + pressing), HEAVIER);
    }

    /** What one bay gives off into the room, counted by bands. */
    double shaken(double[] counts, Bay bay, Optional<Material> damping, double coverage, Layup cover, double[] covered,
                  Sureness how) {
        return loaded(damping, coverage, pressing(cover)) * dot(counts, covered, power(bay, damping, coverage, how));
    }

    /** How much of a shaking the mass of a cover leaves. */
    double loaded(Layup cover) {
        return loaded(Optional.empty(), 0, pressing(cover));
    }

    /** What the bare bays together give off, counted, band by band. */
    double[] shakenBands(double[] counts) {
        double[] bands = new double[counts.length];
        for (Bay bay : bays) {
            double[] power = power(bay, Optional.empty(), 0, Sureness.ABOUT);
            for (int i = 0; i < bands.length; i++) {
                bands[i] += counts[i] * power[i];
            }
        }
        return bands;
    }

    /** Mass per area of what lies on the skin, kg/m²; a floated barrier and what lies on it move by themselves. */
    double pressing(Layup cover) {
        boolean floated = cover.has(Layer.DECOUPLER);
        double mass = 0;
        for (Laid laid : cover.layers()) {
            boolean counts = laid.layer() != Layer.HEAT_SHIELD
                    && !(floated && laid.layer().compareTo(Layer.DECOUPLER) > 0);
            mass += counts ? laid.mass() / panel.area() : 0;
        }
        return mass;
    }

    /** Mean of the workshop's warmth and the peak of the place, as if each ruled half the time; from memory. */
    private double[] power(Bay bay, Optional<Material> damping, double coverage, Sureness how) {
        return powers.computeIfAbsent(new Shaken(bay, damping, coverage, how), k -> {
            double loss = bareLossFactor(how);
            if (damping.isEmpty()) {
                return power.bare(bay, loss);
            }
            Optional<DampingSheet> sheet = damping.map(d -> new DampingSheet(d, knowledge.number("usual/facing-density")));
            double[] usual = power.treated(bay, sheet, coverage, 0, knowledge.number("usual/room-temperature"), loss);
            double[] hot = power.treated(bay, sheet, coverage, 0, peak, loss);
            double[] mean = new double[usual.length];
            for (int i = 0; i < mean.length; i++) {
                mean[i] = (usual[i] + hot[i]) / 2;
            }
            return mean;
        });
    }

    /** The less a bare panel loses by itself, the more a sheet gains. */
    private double bareLossFactor(Sureness how) {
        return knowledge.number(switch (how) {
            case LEAST -> "usual/most-bare-loss-factor";
            case ABOUT -> "usual/bare-loss-factor";
            case MOST -> "usual/least-bare-loss-factor";
        });
    }

    /** The share of what a shaken skin gives off that gets past what lies on it, by bands. */
    double[] covered(Layup cover) {
        double[] covered = null;
        for (Stack strip : Stack.of(panel, cover)) {
            covered = add(covered, strip.share(), covers.computeIfAbsent(strip.layers(), wall::cover));
        }
        return covered;
    }

    /** What comes through the air per area: through the strips of the cover, and damping under the fullest of them. */
    double through(double[] counts, Layup layup, Sureness how) {
        Layup cover = layup.withoutDamping();
        double passed = airborne(counts, cover, how);
        Optional<Laid> damping = layup.of(Layer.DAMPING);
        if (damping.isPresent()) {
            passed += Math.min(damping.get().area() / panel.area(), 1)
                    * underneath(counts, damping.get().material(), cover, how);
        }
        return passed;
    }

    /** What comes through the strips of a cover, counted, where no hole is open. */
    double airborne(double[] counts, Layup cover) {
        return airborne(counts, cover, Sureness.ABOUT);
    }

    private double airborne(double[] counts, Layup cover, Sureness how) {
        double passed = 0;
        for (Stack strip : Stack.of(panel, cover)) {
            passed += strip.share() * dot(counts, transmission(strip.layers(), how));
        }
        return passed;
    }

    /** By how much more passes where a damping sheet lies under the fullest stack; negative. */
    double underneath(double[] counts, Material damping, Layup cover, Sureness how) {
        List<Material> above = Stack.of(panel, cover).get(0).layers();
        List<Material> with = new ArrayList<>(List.of(damping));
        with.addAll(above);
        return dot(counts, transmission(with, how)) - dot(counts, transmission(above, how));
    }

    /**
     * Bare metal is the yardstick. What is off in a single leaf is off alike bare and with more mass on it, so only part
     * of what the mass brings is unsure; a second leaf is another kind of wall and as unsure as its own data.
     */
    private double[] transmission(List<Material> layers, Sureness how) {
        double[] about = transmission(layers);
        if (layers.isEmpty() || how == Sureness.ABOUT) {
            return about;
        }
        double[] bare = transmission(List.of());
        double[] error = wall.uncertainty(layers);
        boolean floated = wall.resonance(layers).isPresent();
        double[] end = new double[about.length];
        for (int i = 0; i < end.length; i++) {
            double decibels = floated ? error[i] : UNSURE_PART * Math.abs(10 * Math.log10(bare[i] / about[i]));
            end[i] = Math.min(1, about[i] * Math.pow(10, (how == Sureness.LEAST ? 1 : -1) * decibels / 10));
        }
        return end;
    }

    private double[] transmission(List<Material> layers) {
        return transmissions.computeIfAbsent(layers, wall::transmission);
    }

    /** The part of a bay that a damping layer covers. */
    double coverage(Laid laid, Bay bay) {
        double share = 0;
        for (Patch patch : laid.patches()) {
            if (patch.place().equals(bay.place())) {
                share += patch.area() / bay.area();
            } else if (patch.place().isWholePanel()) {
                share += patch.area() / panel.area();
            }
        }
        return Math.min(share, 1);
    }

    private static double[] add(double[] sum, double share, double[] values) {
        double[] more = sum == null ? new double[values.length] : sum;
        for (int i = 0; i < more.length; i++) {
            more[i] += share * values[i];
        }
        return more;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double dot(double[] a, double[] b, double[] c) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i] * c[i];
        }
        return sum;
    }
}
