package unthrum.reasoning;

import java.util.Optional;
import unthrum.facts.Opening;
import unthrum.material.Material;

/**
 * A hole to be closed.
 *
 * @param piece the one from the catalogue that closes it; absent when none is large or hardy enough
 * @param gain  merit of closing it: the share of what the bare vehicle gives off, weighted by the aims
 */
public record Closing(WeighedWant want, Opening opening, Optional<Material> piece, double gain) {

    /** How many pieces, or how much of a strip, it takes: one for each hole. */
    public int count() {
        return opening.count();
    }
}
