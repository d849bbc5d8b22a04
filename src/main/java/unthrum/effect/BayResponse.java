package unthrum.effect;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.facts.Bay;
import unthrum.facts.Heat;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.material.Layer;
import unthrum.physics.Band;
import unthrum.physics.Coverage;
import unthrum.physics.Damping;
import unthrum.physics.Estimate;
import unthrum.physics.Mode;
import unthrum.physics.Sheet;
import unthrum.physics.Support;
import unthrum.derive.BayModes;
import unthrum.derive.MetalSheet;

/**
 * Loss factor and first frequency of a bay with a damping patch in its middle. The mode keeps its shape: stiffness and
 * mass change the frequency by Rayleigh's principle. Foam and barrier only load the skin; what they damp is left out.
 */
final class BayResponse {

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
        if (!modes.ringing().isWithin()) {
            return new BayEffect(bay.place(), coverage, Estimate.outside(modes.ringing().reason()));
        }
        Map<Support, Double> covered = laid.isPresent() ? covered(modes, coverage) : Map.of();
        return new BayEffect(bay.place(), coverage,
                Estimate.within(new Estimated(modes, laid, coverage, covered).response()));
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

    /** Share of the bending under the patch, by the shapes of sliding edges: whether they may slide matters little. */
    private Map<Support, Double> covered(BayModes modes, double coverage) {
        Map<Support, Double> covered = new EnumMap<>(Support.class);
        double hinged = Coverage.of(sheet.skin(), modes.shape(), Support.HINGED_SLIDING).value().share(coverage);
        double clamped = Coverage.of(sheet.skin(), modes.shape(), Support.CLAMPED_SLIDING).value().share(coverage);
        for (Support support : Support.values()) {
            covered.put(support, support.clamped() ? clamped : hinged);
        }
        return covered;
    }

    /** One bay with one patch, over the four ways its edges may be held. */
    private final class Estimated {
        private final Map<Support, Mode> first;
        private final Optional<DampingSheet> damping;
        private final double coverage;
        private final Map<Support, Double> covered;

        Estimated(BayModes modes, Optional<Laid> laid, double coverage, Map<Support, Double> covered) {
            this.first = modes.ringing().value().first();
            this.damping = laid.map(l -> new DampingSheet(l.material(), knowledge.number("usual/facing-density")));
            this.coverage = coverage;
            this.covered = covered;
        }

        BayEffect.Response response() {
            List<BayEffect.Warmth> at = new ArrayList<>();
            for (double celsius : temperatures) {
                at.add(warmth(celsius));
            }
            return new BayEffect.Response(band(first.values().stream().mapToDouble(Mode::frequency).toArray()),
                    band(first.keySet().stream().mapToDouble(this::frequencyAfter).toArray()), List.copyOf(at));
        }

        private BayEffect.Warmth warmth(double celsius) {
            double[] gained = first.keySet().stream().mapToDouble(s -> gained(s, celsius)).toArray();
            Band added = band(gained);
            double middle = (added.lower() + added.upper()) / 2;
            double usual = knowledge.number("usual/bare-loss-factor");
            double least = knowledge.number("usual/least-bare-loss-factor");
            double most = knowledge.number("usual/most-bare-loss-factor");
            Range quieter = new Range(Damping.levelReduction(most, most + added.lower()),
                    Damping.levelReduction(usual, usual + middle), Damping.levelReduction(least, least + added.upper()));
            return new BayEffect.Warmth(celsius,
                    new Range(usual + added.lower(), usual + middle, usual + added.upper()), quieter,
                    new Range(quieter.low() / 2, quieter.about() / 2, quieter.high() / 2));
        }

        /** What the patch adds to the loss factor of the mode. */
        private double gained(Support support, double celsius) {
            return damping.map(d -> Damping.modalLossFactor(0, first.get(support).bendingShare(), covered.get(support),
                    composite(d, support, celsius).lossFactor())).orElse(0.0);
        }

        private Damping.Composite composite(DampingSheet sheet, Support support, double celsius) {
            Mode mode = first.get(support);
            return sheet.on(panel, celsius, mode.frequency() * Math.sqrt(mode.bendingShare()));
        }

        private double frequencyAfter(Support support) {
            Mode mode = first.get(support);
            double stiffer = damping.map(d -> mode.bendingShare() * covered.get(support)
                    * (composite(d, support, temperatures[1]).flexuralRigidity() / sheet.flexuralRigidity() - 1))
                    .orElse(0.0);
            double patch = damping.map(d -> d.material().surfaceDensity().si()).orElse(0.0);
            double carried = patch * carried(mode, coverage) + otherMass();
            return mode.frequency() * Math.sqrt((1 + stiffer) / (1 + carried / panel.skinWeight()));
        }
    }

    /** Mass per area of all layers but damping, spread over the panel. */
    private double otherMass() {
        return layup.layers().stream().filter(l -> l.layer() != Layer.DAMPING && l.layer() != Layer.HEAT_SHIELD)
                .mapToDouble(Laid::mass).sum() / panel.area();
    }

    /**
     * Share of the mode's motion under a centred patch: ∫∫sin² over it for hinged edges, with side shares √c,
     * s ± sin(mπs)/mπ. Clamped edges move still more in the middle.
     */
    private static double carried(Mode mode, double coverage) {
        double side = Math.sqrt(coverage);
        return along(mode.lengthHalfWaves(), side) * along(mode.widthHalfWaves(), side);
    }

    private static double along(int halfWaves, double side) {
        double sign = halfWaves % 2 == 1 ? 1 : -1;
        return side + sign * Math.sin(halfWaves * Math.PI * side) / (halfWaves * Math.PI);
    }

    private static Band band(double[] values) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return new Band(low, high);
    }
}
