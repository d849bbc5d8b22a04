package unthrum.reasoning;

import java.util.List;
import java.util.stream.IntStream;
import unthrum.facts.Bay;
import unthrum.physics.Coverage;
import unthrum.physics.Damping;
import unthrum.physics.Estimate;
import unthrum.physics.Skin;
import unthrum.physics.Support;

/**
 * What part of a damping patch does, against the whole one: the first pieces in the middle of a bay do most.
 *
 * <p>The added loss factor follows the share c of the bending energy under the patch, so with the gain G of the whole
 * patch in dB a part reaches ΔL = 20 lg(1 + (10^(G/20) − 1) · c_part / c_whole) (Ungar and Kerwin 1962; from memory).
 * The shares are those of a flat, hinged bay of the same proportions. Where no gain is known the effect is taken in
 * proportion to the area, so that nothing is promised.
 */
final class PartCover {

    /** A fitter halves a sheet and halves it again. Common practice. */
    static final int PIECES = 4;

    private PartCover() {
    }

    /** The share of the whole patch's effect after one, two, three and all four quarters of it. */
    static List<Double> returns(Bay bay, Skin skin, double cover) {
        Estimate<Coverage> flat = Coverage.of(skin, unthrum.physics.Bay.flat(bay.length(), bay.width()),
                Support.HINGED_SLIDING);
        boolean known = Double.isFinite(bay.gain()) && bay.gain() > 0 && flat.isWithin();
        return IntStream.rangeClosed(1, PIECES).mapToObj(n -> (double) n / PIECES)
                .map(part -> known ? effect(bay.gain(), flat.value(), cover, part) : part).toList();
    }

    private static double effect(double gain, Coverage bay, double cover, double part) {
        double added = Math.pow(10, gain / 20) - 1;
        return Damping.levelReduction(1, 1 + added * bay.share(cover * part) / bay.share(cover)) / gain;
    }
}
