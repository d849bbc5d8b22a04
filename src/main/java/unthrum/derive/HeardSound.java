package unthrum.derive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import unthrum.facts.Panel;
import unthrum.facts.Setting;
import unthrum.knowledge.AimEntry;
import unthrum.knowledge.AimEntry.Heard;
import unthrum.knowledge.AimEntry.Level;
import unthrum.knowledge.AimEntry.Shakes;
import unthrum.knowledge.AimEntry.Weighting;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Excitation;
import unthrum.physics.ThirdOctave;
import unthrum.survey.Aim;
import unthrum.survey.NoiseSource;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/**
 * The sound that an aim is about, band by band over {@link ThirdOctave#HEARD}, weighed as the aim is: what counts of the
 * sound power in each band, the bands against each other.
 */
public final class HeardSound {

    private final Heard heard;
    private final double[] shaking;
    private final double[] airborne;
    private final double away;

    private HeardSound(Heard heard, Band band, double away) {
        this.heard = heard;
        this.shaking = spectrum(heard.shaking(), heard.weighting(), band);
        this.airborne = spectrum(heard.airborne(), heard.weighting(), band);
        this.away = away;
    }

    /** Nothing for an aim that is no sound, or none with a formula. */
    public static Optional<HeardSound> of(Aim aim, Survey survey, Knowledge knowledge) {
        return knowledge.aim(aim).heard().map(heard -> new HeardSound(heard, band(heard, survey, knowledge),
                Math.pow(10, -knowledge.number("worth/away-from-source") / 10)));
    }

    private static Band band(Heard heard, Survey survey, Knowledge knowledge) {
        if (heard.orders().isEmpty()) {
            return new Band(0, Double.MAX_VALUE);
        }
        Answers answers = new Answers(knowledge, Zone.FLOOR, new LinkedHashMap<>());
        double firing = Excitation.firingFrequency(
                answers.quantity(survey.vehicle().engineSpeed(), "engineSpeed") * 60,
                answers.count(survey.vehicle().cylinders(), "cylinders", "cylinders"));
        return new Band(firing * heard.orders().get().get(0).si(), firing * heard.orders().get().get(1).si());
    }

    private static double[] spectrum(List<Level> points, Weighting weighting, Band band) {
        double[] spectrum = new double[ThirdOctave.HEARD.size()];
        for (int i = 0; i < spectrum.length; i++) {
            ThirdOctave third = ThirdOctave.HEARD.get(i);
            if (inside(points, third) && band.lower() <= third.upperEdge() && band.upper() >= third.lowerEdge()) {
                double weighed = weighting == Weighting.A_WEIGHTED ? third.aWeighting() : 0;
                spectrum[i] = Math.pow(10, (level(points, third.nominal()) + weighed) / 10);
            }
        }
        return spectrum;
    }

    private static boolean inside(List<Level> points, ThirdOctave third) {
        return !points.isEmpty() && third.nominal() >= points.get(0).at().si()
                && third.nominal() <= points.get(points.size() - 1).at().si();
    }

    /** Straight over lg f between the points. */
    private static double level(List<Level> points, double frequency) {
        Level before = points.get(0);
        for (Level after : points) {
            if (after.at().si() >= frequency) {
                double span = Math.log(after.at().si() / before.at().si());
                double way = span == 0 ? 0 : Math.log(frequency / before.at().si()) / span;
                return (1 - way) * before.level().si() + way * after.level().si();
            }
            before = after;
        }
        return before.level().si();
    }

    /** What counts of the sound power that shaken bays give off, by bands. */
    public double[] shaking() {
        return shaking.clone();
    }

    /** What counts of the airborne sound that meets a panel beside the source, by bands. */
    public double[] airborne() {
        return airborne.clone();
    }

    /** Whether the panel is shaken. */
    public boolean shakes(Panel panel) {
        return heard.shakes() == Shakes.ALL || panel.zone() == Zone.ROOF;
    }

    /** The part of the airborne sound that meets a panel: all of it beside the source. */
    public double reaching(Panel panel, Setting setting) {
        boolean beside = setting.nearNoise() != NoiseSource.NONE && heard.beside().contains(setting.nearNoise())
                || heard.zones().orElse(List.of()).contains(panel.zone());
        return beside ? 1 : away;
    }
}
