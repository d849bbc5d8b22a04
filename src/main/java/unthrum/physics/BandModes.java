package unthrum.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * How a bay answers to broad-band forcing, in each third octave of {@link ThirdOctave#HEARD}: mode by mode while modes
 * are few, by modal density above.
 *
 * <p>Each mode (m, n) lies somewhere between hinged edges that slide and clamped edges that do not, every frequency in
 * that range (on a logarithmic scale) as likely; edges unable to slide add to the square of each frequency what they
 * add to the first mode's. From the first band with {@link #MANY} modes on their number is A Δ(k²)/4π over all headings
 * of a wave, whose stretching stiffness is that of the curve along its heading (Bolotin; Lyon and DeJong; from memory).
 * Where the theory of single modes does not hold all bands are counted so.
 *
 * <p>A mode driven by pressure of the same strength all over, without correlation from place to place, gives off
 * σ ρc/(m''² ω η), times the same for all modes: the sums are power per unit of forcing, comparable from bay to bay.
 * A mode stays in the band, and radiates, as in the bare bay: what a layer's mass and stiffness move into a
 * neighbouring band is left out, so that more mass, damping or cover is never told as more noise.
 */
public final class BandModes {

    /** Modes in a band from which on their number is enough to know; three to five are usual in energy analysis. */
    static final double MANY = 5;

    /** Headings over a quarter turn. */
    private static final int HEADINGS = 12;

    private final Skin skin;
    private final Bay bay;
    private final double critical;
    private final List<Line> lines = new ArrayList<>();

    /**
     * So many modes of one kind in one band.
     *
     * @param radiation σ ρc of them, kg/(m²·s)
     */
    private record Line(int band, double modes, double frequency, double radiation, Kind kind) {}

    /** Modes of one kind under patches of the levels of {@link Cover}; two where the edges are not known. */
    private static final class Kind {
        private final DoubleFunction<CoveredMode[]> covered;
        private final CoveredMode[][] kept = new CoveredMode[Cover.LEVELS.length][];

        Kind(DoubleFunction<CoveredMode[]> covered) {
            this.covered = covered;
        }

        synchronized CoveredMode[] at(int level) {
            if (kept[level] == null) {
                kept[level] = covered.apply(Cover.LEVELS[level]);
            }
            return kept[level];
        }
    }

    /** @param ringing of the bay's first mode, or why single modes cannot be told */
    public BandModes(Skin skin, Bay bay, Estimate<Ringing> ringing) {
        this.skin = skin;
        this.bay = bay;
        this.critical = RadiationEfficiency.critical(skin);
        int crowded = ringing.isWithin() ? 0 : -1;
        for (int band = 0; band < ThirdOctave.HEARD.size(); band++) {
            Line line = statistical(band);
            if (crowded == 0 && line.modes() >= MANY) {
                single(ringing.value(), ThirdOctave.HEARD.get(band).lowerEdge());
                crowded = -1;
            }
            if (crowded < 0 && line.modes() > 0) {
                lines.add(line);
            }
        }
        if (crowded == 0) {
            single(ringing.value(), ThirdOctave.HEARD.get(ThirdOctave.HEARD.size() - 1).upperEdge());
        }
    }

    private void single(Ringing ringing, double limit) {
        double held = stretch(ringing);
        double lowest = ringing.frequency().lower();
        for (int m = 1; PlateModes.hinged(skin, bay, m, 1) <= limit; m++) {
            for (int n = 1; PlateModes.hinged(skin, bay, m, n) <= limit; n++) {
                Mode soft = ShellModes.sliding(skin, bay, false, m, n);
                Mode sliding = ShellModes.sliding(skin, bay, true, m, n);
                double square = sliding.frequency() * sliding.frequency();
                double share = sliding.bendingShare() * square / (square + held);
                Mode stiff = new Mode(Math.sqrt(square + held), share, m, n);
                spread(soft, stiff, Math.max(lowest, soft.frequency()), limit);
            }
        }
    }

    /** What edges unable to slide add to the square of the first frequency, Hz². */
    private static double stretch(Ringing ringing) {
        double fixed = ringing.first().get(Support.CLAMPED_FIXED).frequency();
        double sliding = ringing.first().get(Support.CLAMPED_SLIDING).frequency();
        return Math.max(0, fixed * fixed - sliding * sliding);
    }

    /** One mode over the bands that it may lie in. */
    private void spread(Mode soft, Mode stiff, double lower, double limit) {
        double upper = Math.max(stiff.frequency(), lower * 1.001);
        Kind kind = new Kind(share -> new CoveredMode[] {
            CoveredMode.of(soft, bay, false, share, skin.poissonRatio()),
            CoveredMode.of(stiff, bay, true, share, skin.poissonRatio())
        });
        for (int band = 0; band < ThirdOctave.HEARD.size(); band++) {
            ThirdOctave third = ThirdOctave.HEARD.get(band);
            double from = Math.max(lower, third.lowerEdge());
            double to = Math.min(Math.min(upper, limit), third.upperEdge());
            if (to > from) {
                lines.add(line(band, Math.log(to / from) / Math.log(upper / lower), Math.sqrt(from * to), kind));
            }
        }
    }

    private Line statistical(int band) {
        ThirdOctave third = ThirdOctave.HEARD.get(band);
        double modes = 0;
        double bent = 0;
        double waves = 0;
        for (int i = 0; i < HEADINGS; i++) {
            double across = Math.pow(Math.sin((i + 0.5) * Math.PI / 2 / HEADINGS), 2);
            double curvature = across * bay.lengthCurvature() + (1 - across) * bay.widthCurvature();
            double stretching = Math.sqrt(skin.membraneStiffness() / skin.surfaceDensity()) * Math.abs(curvature)
                    / (2 * Math.PI);
            double from = waveNumberSquared(third.lowerEdge(), stretching);
            double to = waveNumberSquared(third.upperEdge(), stretching);
            double count = bay.area() * (to - from) / (4 * Math.PI * HEADINGS);
            double frequency = Math.max(third.centre(), (stretching + third.upperEdge()) / 2);
            modes += count;
            bent += count * Math.max(0, 1 - Math.pow(stretching / frequency, 2));
            waves += count * (from + to) / 2;
        }
        double share = modes > 0 ? bent / modes : 0;
        double waveNumberSquared = modes > 0 ? waves / modes : 1;
        return line(band, modes, third.centre(), new Kind(
                covered -> new CoveredMode[] {CoveredMode.everywhere(share, waveNumberSquared, covered)}));
    }

    private double waveNumberSquared(double frequency, double stretching) {
        return frequency <= stretching ? 0
                : Damping.waveNumberSquared(skin, Math.sqrt(frequency * frequency - stretching * stretching));
    }

    private Line line(int band, double modes, double frequency, Kind kind) {
        double sigma = RadiationEfficiency.of(frequency, critical, bay.length(), bay.width());
        return new Line(band, modes, frequency, sigma * Air.AT_20_CELSIUS.impedance(), kind);
    }

    /** Expected modes in each band. */
    public double[] modes() {
        double[] modes = new double[ThirdOctave.HEARD.size()];
        lines.forEach(line -> modes[line.band()] += line.modes());
        return modes;
    }

    /** The bay without damping. */
    public Damped bare() {
        return new Damped(null, null, 0);
    }

    /**
     * The bay with a damping layer, whatever share of it is covered.
     *
     * @param core the material at a frequency (Hz)
     * @param mass of the layer, kg/m²
     */
    public Damped damped(DampingLayer layer, DoubleFunction<Viscoelastic> core, double mass) {
        return new Damped(layer, core, mass);
    }

    /** A bay with one damping layer; levels of cover are computed when they are asked for. */
    public final class Damped {

        private final DampingLayer layer;
        private final DoubleFunction<Viscoelastic> core;
        private final double mass;
        private final Level[] levels = new Level[Cover.LEVELS.length];

        private Damped(DampingLayer layer, DoubleFunction<Viscoelastic> core, double mass) {
            this.layer = layer;
            this.core = core;
            this.mass = mass;
            this.levels[0] = new Level(lines.size());
            Arrays.fill(levels[0].stored, 1);
        }

        /**
         * Power in each band.
         *
         * @param coverage 0 to 1, a patch in the middle of the bay
         * @param otherMass of what else lies on the bay, kg/m²
         * @param bareLossFactor of the bare bay
         * @param radiationCounted whether that holds the loss by radiation from both faces already, as a measured one
         *     does
         */
        public synchronized double[] power(
                double coverage, double otherMass, double bareLossFactor, boolean radiationCounted) {
            int above = Cover.above(coverage);
            double t = layer == null ? 0 : Cover.between(above, coverage);
            Level from = layer == null ? levels[0] : level(above - 1);
            Level to = t == 0 ? from : level(above);
            double[] power = new double[ThirdOctave.HEARD.size()];
            for (int i = 0; i < lines.size(); i++) {
                Line line = lines.get(i);
                double moving = skin.surfaceDensity() + otherMass + mass * between(from.moved, to.moved, i, t);
                double stored = between(from.stored, to.stored, i, t);
                double loss = bareLossFactor + between(from.loss, to.loss, i, t);
                double damped = moving * moving * 2 * Math.PI * line.frequency()
                        * Math.sqrt(stored * skin.surfaceDensity() / moving) * loss;
                double radiated = radiationCounted ? 0 : 2 * moving * line.radiation();
                power[line.band()] += line.modes() * line.radiation() / (damped + radiated);
            }
            return power;
        }

        private static double between(double[] from, double[] to, int i, double t) {
            return from[i] * (1 - t) + to[i] * t;
        }

        /** More cover never does less, see {@link Cover}. */
        private Level level(int index) {
            if (levels[index] == null) {
                Level less = level(index - 1);
                Level level = new Level(lines.size());
                for (int i = 0; i < lines.size(); i++) {
                    level.fill(i, lines.get(i), this, index);
                    level.loss[i] = Math.max(level.loss[i], less.loss[i]);
                    level.stored[i] = Math.max(level.stored[i], less.stored[i]);
                }
                levels[index] = level;
            }
            return levels[index];
        }
    }

    /** What each line gains at one level of cover. */
    private static final class Level {
        final double[] stored;
        final double[] loss;
        final double[] moved;

        Level(int lines) {
            stored = new double[lines];
            loss = new double[lines];
            moved = new double[lines];
        }

        void fill(int i, Line line, Damped damped, int level) {
            CoveredMode[] modes = line.kind().at(level);
            Viscoelastic material = damped.core.apply(line.frequency());
            for (CoveredMode mode : modes) {
                CoveredMode.Stiffness stiffness = mode.stiffness(damped.layer, material);
                stored[i] += stiffness.stored() / modes.length;
                loss[i] += stiffness.lossFactor() / modes.length;
                moved[i] += mode.movement() / modes.length;
            }
        }
    }
}
