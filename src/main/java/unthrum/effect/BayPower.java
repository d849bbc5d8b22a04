package unthrum.effect;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import unthrum.derive.BayModes;
import unthrum.derive.MetalSheet;
import unthrum.derive.PanelFacts;
import unthrum.facts.Bay;
import unthrum.facts.Panel;
import unthrum.facts.Place;
import unthrum.material.Material;
import unthrum.physics.BandModes;
import unthrum.physics.Estimate;
import unthrum.physics.Kept;
import unthrum.physics.Ringing;
import unthrum.physics.Sheet;
import unthrum.physics.ThirdOctave;

/**
 * Sound power that a bay gives off in each third octave of {@link ThirdOctave#HEARD} for a unit of broad-band forcing
 * per area: a relative unit, the same for all panels. See {@link BandModes}. Where no single mode can be told (a deep
 * curve) modes are counted by density in all bands. A bare loss factor that the survey measured goes before the one
 * that is given.
 */
public final class BayPower {

    /** So many shapes of bay are kept: vehicles have twins, and a panel is weighed with many materials. */
    private static final int MOST_KEPT = 256;
    private static final Kept<Metalwork, Answers> ANSWERS = new Kept<>(MOST_KEPT, Answers::new);

    private final PanelFacts facts;
    private final Sheet sheet;
    private final Map<Place, Answers> bays = new ConcurrentHashMap<>();

    /** All that the answers of a bay hang on, but for what lies on it. */
    private record Metalwork(Sheet sheet, unthrum.physics.Bay shape, Estimate<Ringing> ringing) {
    }

    public BayPower(PanelFacts facts) {
        this.facts = facts;
        this.sheet = MetalSheet.of(facts.the(Panel.class));
    }

    public double[] bare(Bay bay, double bareLossFactor) {
        return power(bay, answers(bay).bare, 0, 0, bareLossFactor);
    }

    /**
     * @param damping of the bay, if any
     * @param coverage share of the bay under it, 0 to 1
     * @param otherMass of what else lies on the bay, kg/m²
     * @param celsius of the damping sheet
     */
    public double[] treated(Bay bay, Optional<DampingSheet> damping, double coverage, double otherMass, double celsius,
                            double bareLossFactor) {
        Answers answers = answers(bay);
        BandModes.Damped damped = damping.isEmpty() || coverage <= 0 ? answers.bare
                : answers.damped(damping.get(), celsius);
        return power(bay, damped, Math.min(coverage, 1), otherMass, bareLossFactor);
    }

    private static double[] power(Bay bay, BandModes.Damped damped, double coverage, double otherMass, double bare) {
        boolean measured = Double.isFinite(bay.bareLossFactor());
        return damped.power(coverage, otherMass, measured ? bay.bareLossFactor() : bare, measured);
    }

    private Answers answers(Bay bay) {
        return bays.computeIfAbsent(bay.place(), place -> {
            BayModes modes = facts.modes(place).orElseThrow();
            return ANSWERS.of(new Metalwork(sheet, modes.shape(), modes.ringing()));
        });
    }

    /** One shape of bay with every material that was tried on it. */
    private static final class Answers {
        private final Sheet sheet;
        private final BandModes modes;
        private final BandModes.Damped bare;
        private final Map<Material, Map<Warm, BandModes.Damped>> damped = new IdentityHashMap<>();

        private record Warm(double celsius, double facingDensity) {
        }

        Answers(Metalwork metal) {
            this.sheet = metal.sheet;
            this.modes = new BandModes(metal.sheet.skin(), metal.shape, metal.ringing);
            this.bare = modes.bare();
        }

        synchronized BandModes.Damped damped(DampingSheet damping, double celsius) {
            return damped.computeIfAbsent(damping.material(), m -> new HashMap<>())
                    .computeIfAbsent(new Warm(celsius, damping.facingDensity()), w -> modes.damped(damping.on(sheet),
                            frequency -> damping.core(celsius, frequency), damping.mass()));
        }
    }
}
