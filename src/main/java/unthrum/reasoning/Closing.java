package unthrum.reasoning;

import java.util.Optional;
import unthrum.facts.Opening;
import unthrum.material.Material;

/** A hole to be closed, and the piece from the catalogue that closes it; absent when none is large or hardy enough. */
public record Closing(WeighedWant want, Opening opening, Optional<Material> piece) {

    /** How many pieces, or how much of a strip, it takes: one for each hole. */
    public int count() {
        return opening.count();
    }
}
