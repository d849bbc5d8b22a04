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
import unthrum.physics.Cover;
import unthrum.physics.CoveredMode;
import unthrum.physics.Damping;
import unthrum.physics.DampingLayer;
import unthrum.physics.Estimate;
import unthrum.physics.Mode;
import unthrum.physics.RadiationEfficiency;
import unthrum.physics.Sheet;
import unthrum.physics.Support;
import unthrum.physics.Viscoelastic;

/**
 * Loss factor and first frequency of a bay with a damping patch in its middle, each with a range that holds the ways
 * its edges may be held, what a bare panel may lose, and the error of the formula ({@link CoveredMode}). Foam and
 * barrier only load the skin; what they damp is left out.
 */
final class BayResponse {

    /**
     * By what factor the loss factor may lie beyond its range over the edges. Holds 12 of 12 finite-element bays with a
     * complex modulus, and 96 % of those with cores up to 10 MPa among 300 that were drawn at random and solved by a
     * converged Ritz method; stiffer cores, as cold ones are, 92 %.
     */
    static final double LOSS_ERROR = 1.35;

    /** By what share of its range over the edges the told frequency may be too high, or too low. Same bays. */
    static final double TOO_HIGH = 0.125;
    static final double TOO_LOW = 0.02;

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
        return new BayEffect(bay.place(), coverage, modes.ringing()
                .map(ringing -> new Estimated(bay, modes, laid, coverage).response()));
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
        private final double coverage;
        private final Map<Support, Cover> covers = new EnumMap<>(Support.class);
        private final Optional<DampingSheet> damping;
        private final Optional<DampingLayer> layer;

        Estimated(Bay bay, BayModes modes, Optional<Laid> laid, double coverage) {
            this.bay = bay;
            this.shape = modes.shape();
            this.first = modes.ringing().value().first();
            this.damping = laid.map(l -> new DampingSheet(l.material(), knowledge.number("usual/facing-density")));
            this.layer = damping.map(d -> d.on(sheet));
            this.coverage = coverage;
            if (damping.isPresent()) {
                first.forEach((support, mode) -> covers.put(support,
                        new Cover(mode, shape, support.clamped(), sheet.poissonRatio())));
            }
        }

        BayEffect.Response response() {
            List<BayEffect.Warmth> at = new ArrayList<>();
            for (double celsius : temperatures) {
                at.add(warmth(celsius));
            }
            Band before = range(this::before);
            Band after = after();
            return new BayEffect.Response(before, after, read(before), read(after), List.copyOf(at));
        }

        /** A computed range with what a fitter's reading may be off, as the bay's own range carries it. */
        private Band read(Band computed) {
            Band plain = range(s -> first.get(s).frequency());
            boolean told = Double.isFinite(bay.lowest()) && !isNoted();
            return told ? new Band(computed.lower() * bay.lowest() / plain.lower(),
                    computed.upper() * Math.max(bay.highest() / plain.upper(), bay.lowest() / plain.lower())) : computed;
        }

        private boolean isNoted() {
            return bay.note() >= bay.lowest() && bay.note() <= bay.highest();
        }

        private Band after() {
            Band told = range(s -> before(s) * shift(s));
            if (layer.isEmpty()) {
                return told;
            }
            Band edges = range(s -> first.get(s).frequency() * shift(s));
            double span = edges.upper() - edges.lower();
            return new Band(told.lower() - TOO_HIGH * span, told.upper() + TOO_LOW * span);
        }

        private Band range(ToDoubleFunction<Support> value) {
            return new Band(first.keySet().stream().mapToDouble(value).min().orElseThrow(),
                    first.keySet().stream().mapToDouble(value).max().orElseThrow());
        }

        /** What the patch adds to the loss factor of the mode, in one piece or in several. */
        private double lossFactor(Support support, double celsius, boolean pieces) {
            return damping.map(d -> {
                Viscoelastic core = d.core(celsius, first.get(support).frequency());
                ToDoubleFunction<CoveredMode> added = mode -> mode.stiffness(layer.get(), core).lossFactor();
                return pieces ? covers.get(support).inPieces(coverage, added)
                        : covers.get(support).inOnePiece(coverage, added);
            }).orElse(0.0);
        }

        /** As measured, where the measured note may be the bay's first. */
        private double before(Support support) {
            return isNoted() ? bay.note() : first.get(support).frequency();
        }

        /** By what the layers multiply the frequency, in the workshop. */
        private double shift(Support support) {
            double loaded = 1 + otherMass() / sheet.surfaceDensity();
            if (damping.isEmpty()) {
                return 1 / Math.sqrt(loaded);
            }
            CoveredMode mode = CoveredMode.of(first.get(support), shape, support.clamped(), coverage,
                    sheet.poissonRatio());
            double patch = damping.get().mass() * mode.movement() / sheet.surfaceDensity();
            Viscoelastic core = damping.get().core(temperatures[1], first.get(support).frequency());
            return Math.sqrt(mode.stiffness(layer.get(), core).stored() / (loaded + patch));
        }

        private BayEffect.Warmth warmth(double celsius) {
            Band over = new Band(range(s -> lossFactor(s, celsius, false)).lower(),
                    range(s -> lossFactor(s, celsius, true)).upper());
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
