package unthrum.effect;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import unthrum.derive.BayModes;
import unthrum.derive.MetalSheet;
import unthrum.facts.Bay;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.physics.Band;
import unthrum.physics.CoveredMode;
import unthrum.physics.Damping;
import unthrum.physics.DampingLayer;
import unthrum.physics.Estimate;
import unthrum.physics.Mode;
import unthrum.physics.RadiationEfficiency;
import unthrum.physics.Sheet;
import unthrum.physics.Support;

/**
 * Loss factor and first frequency of a bay with a damping patch in its middle, each with a range that holds the ways
 * its edges may be held, what a bare panel may lose, and the error of the formula ({@link CoveredMode}). Foam and
 * barrier only load the skin; what they damp is left out.
 */
final class BayResponse {

    /**
     * By what factor the loss factor may lie beyond its range over the edges. Holds 12 of 12 finite-element bays with a
     * complex modulus, and 96 % of 300 that were drawn at random and solved by a converged Ritz method.
     */
    static final double LOSS_ERROR = 1.35;

    /** By what share of the frequency that stiffness gains the told one may be too high, or too low. Same bays. */
    static final double TOO_HIGH = 0.18;
    static final double TOO_LOW = 0.03;

    private final Knowledge knowledge;
    private final double[] temperatures;
    private final Panel panel;
    private final Layup layup;
    private final Sheet sheet;

    BayResponse(Knowledge knowledge, Vehicle vehicle, Treated treated) {
        this.knowledge = knowledge;
        this.panel = treated.facts().the(Panel.class);
        this.layup = treated.layup();
        this.sheet = MetalSheet.of(panel);
        this.temperatures = new double[] {vehicle.coldest(), knowledge.number("usual/room-temperature"),
            treated.facts().the(Heat.class).peak()};
    }

    BayEffect of(Bay bay, BayModes modes) {
        Optional<Laid> laid = layup.layers().stream().filter(l -> l.layer() == Layer.DAMPING)
                .filter(l -> coverage(l, bay) > 0).findFirst();
        double coverage = laid.map(l -> coverage(l, bay)).orElse(0.0);
        return new BayEffect(bay.place(), coverage, modes.ringing().map(ringing -> new Estimated(bay, modes, laid,
                coverage).response()));
    }

    private double coverage(Laid laid, Bay bay) {
        double share = 0;
        for (Patch patch : laid.patches()) {
            Place place = patch.place();
            if (place.equals(bay.place())) {
                share += patch.area() / bay.area();
            } else if (place.isWholePanel()) {
                share += patch.area() / panel.area();
            }
        }
        return Math.min(share, 1);
    }

    /** Mass per area of all layers but damping, spread over the panel. */
    private double otherMass() {
        return layup.layers().stream().filter(l -> l.layer() != Layer.DAMPING && l.layer() != Layer.HEAT_SHIELD)
                .mapToDouble(Laid::mass).sum() / panel.area();
    }

    /** One bay with one patch, over the four ways its edges may be held. */
    private final class Estimated {
        private final Bay bay;
        private final unthrum.physics.Bay shape;
        private final Map<Support, Mode> first;
        private final Map<Support, CoveredMode> covered = new EnumMap<>(Support.class);
        private final Optional<DampingSheet> damping;
        private final Optional<DampingLayer> layer;

        Estimated(Bay bay, BayModes modes, Optional<Laid> laid, double coverage) {
            this.bay = bay;
            this.shape = modes.shape();
            this.first = modes.ringing().value().first();
            this.damping = laid.map(l -> new DampingSheet(l.material(), knowledge.number("usual/facing-density")));
            this.layer = damping.map(d -> d.on(sheet));
            if (laid.isPresent()) {
                first.forEach((support, mode) -> covered.put(support,
                        CoveredMode.of(mode, shape, support.clamped(), coverage, sheet.poissonRatio())));
            }
        }

        BayEffect.Response response() {
            List<BayEffect.Warmth> at = new ArrayList<>();
            for (double celsius : temperatures) {
                at.add(warmth(celsius));
            }
            return new BayEffect.Response(range(s -> before(s)),
                    new Band(range(s -> after(s, -TOO_HIGH)).lower(), range(s -> after(s, TOO_LOW)).upper()),
                    List.copyOf(at));
        }

        private Band range(ToDoubleFunction<Support> value) {
            return new Band(first.keySet().stream().mapToDouble(value).min().orElseThrow(),
                    first.keySet().stream().mapToDouble(value).max().orElseThrow());
        }

        private CoveredMode.Stiffness stiffness(Support support, double celsius) {
            return layer.map(l -> covered.get(support).stiffness(l,
                    damping.get().core(celsius, first.get(support).frequency())))
                    .orElse(CoveredMode.Stiffness.BARE);
        }

        /** As measured, where the measured note may be the bay's first. */
        private double before(Support support) {
            return bay.note() >= bay.lowest() && bay.note() <= bay.highest() ? bay.note()
                    : first.get(support).frequency();
        }

        private double after(Support support, double error) {
            double moved = damping.map(d -> d.mass() * covered.get(support).movement()).orElse(0.0);
            double loaded = before(support) / Math.sqrt(1 + (moved + otherMass()) / sheet.surfaceDensity());
            double stiffened = loaded * Math.sqrt(stiffness(support, temperatures[1]).stored());
            return stiffened + error * (stiffened - loaded);
        }

        private BayEffect.Warmth warmth(double celsius) {
            Band over = range(s -> stiffness(s, celsius).lossFactor());
            double middle = (over.lower() + over.upper()) / 2;
            Range added = new Range(over.lower() / LOSS_ERROR, middle, over.upper() * LOSS_ERROR);
            Range bare = bare();
            Range quieter = new Range(Damping.levelReduction(bare.high(), bare.high() + added.low()),
                    Damping.levelReduction(bare.about(), bare.about() + added.about()),
                    Damping.levelReduction(bare.low(), bare.low() + added.high()));
            return new BayEffect.Warmth(celsius, new Range(bare.about() + added.low(), bare.about() + added.about(),
                    bare.about() + added.high()), quieter,
                    new Range(quieter.low() / 2, quieter.about() / 2, quieter.high() / 2));
        }

        /** Loss factor of the bare bay: as measured, else what its metal and seams may lose and what both faces radiate. */
        private Range bare() {
            if (Double.isFinite(bay.bareLossFactor())) {
                return Range.exactly(bay.bareLossFactor());
            }
            Band radiated = range(s -> RadiationEfficiency.lossFactor(sheet.skin(), shape, first.get(s).frequency()));
            return new Range(knowledge.number("usual/least-bare-loss-factor") + radiated.lower(),
                    knowledge.number("usual/bare-loss-factor") + (radiated.lower() + radiated.upper()) / 2,
                    knowledge.number("usual/most-bare-loss-factor") + radiated.upper());
        }
    }
}
