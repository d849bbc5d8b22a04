package unthrum.reasoning;

import java.util.List;
import java.util.Optional;
import unthrum.material.Material;
import unthrum.reasoning.engine.Judgement;

/**
 * What became of one material that could have served a want.
 *
 * @param rejectedBy every limit that rejects it
 * @param best       if no limit does, the best layup that holds it; absent when it fits only with a companion that
 *                   does not
 */
public record Considered(Material material, List<Judgement> rejectedBy, Optional<Scored> best, boolean chosen) {
}
