package unthrum.facts;

import java.util.Set;
import unthrum.survey.Dirt;
import unthrum.survey.OldLayer;
import unthrum.survey.Paint;
import unthrum.survey.Rust;

/** The state of the metal's face. */
public record Surface(
        String panel,
        Paint paint,
        Dirt dirt,
        Rust rust,
        OldLayer old,
        Set<String> assumed) implements Fact {
}
