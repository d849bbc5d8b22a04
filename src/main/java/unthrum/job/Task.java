package unthrum.job;

import java.util.List;
import unthrum.reasoning.Closing;
import unthrum.effect.Laid;

/**
 * What a step does on one panel: one box to tick.
 *
 * @param parts    the parts of the panel that its duties name
 * @param layers   what is laid, from the metal inward
 * @param closings the holes that are closed, with their pieces
 * @param area     what is worked over, in m²
 */
public record Task(String panel, List<String> parts, List<Laid> layers, List<Closing> closings, double area) {

    /** What it puts on the panel, in kg. */
    double mass() {
        return layers.stream().mapToDouble(Laid::mass).sum();
    }

    /** The largest piece, in m². */
    double largest() {
        return layers.stream().flatMap(l -> l.patches().stream()).mapToDouble(p -> p.area()).max().orElse(0);
    }
}
