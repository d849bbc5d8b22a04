package unthrum.effect;

import java.util.List;

/**
 * What the layers do to one panel, before and after.
 *
 * @param gains        for each aim that a formula tells: the one account by which layers are chosen
 * @param wallMeasured whether walls such as the layers make were measured and compared; else all that is said of their
 *                     sound is computed only, as with a barrier on foam
 */
public record PanelEffect(String panel, List<PanelGain> gains, List<BayEffect> bays, List<Blocking> blocking, HeatEffect heat,
                          MassEffect mass, boolean wallMeasured) {
}
