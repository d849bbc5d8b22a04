package unthrum.effect;

import java.util.List;

/**
 * What the layers do to one panel, before and after.
 *
 * @param gains for each aim that a formula tells: the one account by which layers are chosen
 */
public record PanelEffect(String panel, List<PanelGain> gains, List<BayEffect> bays, List<Blocking> blocking, HeatEffect heat,
                          MassEffect mass) {
}
