package unthrum.effect;

import java.util.List;

/** What the layers do to one panel, before and after. */
public record PanelEffect(String panel, List<BayEffect> bays, List<Blocking> blocking, HeatEffect heat,
                          MassEffect mass) {
}
