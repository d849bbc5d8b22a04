package unthrum.built;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import unthrum.material.Material;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;
import unthrum.survey.Tap;

/** One panel as it was left. A list that is absent is unknown; 'none' says there is nothing. */
public record BuiltPanel(
        @Says("The panel's name in the survey") String panel,
        @Says("Who did and checked it") Optional<String> who,
        Optional<LocalDate> when,
        @Says("What was fitted, from the metal inward") Optional<List<FittedLayer>> layers,
        @Says("Work done on it") Optional<List<Done>> done,
        @Says("What the metal answers now: one word for the panel, or one for each bay in order")
        Optional<List<Tap>> tapAfter,
        @Says("How the trim went back") Optional<TrimBack> trim,
        @Says("What moves nearby, tried through its whole travel") Optional<Travel> travel,
        @Says("The drains, tried with water") Optional<Drains> drains,
        @Says("The holes that were closed, such as 'cable hole 1'") Optional<List<String>> closed,
        @Says("Anything fitted that is no layer and was not planned, in your own words") Optional<List<String>> extras,
        @Says("Why it differs from the plan") Optional<String> differsBecause,
        @Says("Whether somebody says that all is done; a bare word proves nothing") Optional<Boolean> allDone,
        Optional<String> note) {

    /** One layer that was fitted. */
    public record FittedLayer(
            @Says("The material's name in the catalogue") String material,
            @Says("The bays that it lies on, such as 'bay 2'; the whole panel when absent") Optional<List<String>> at,
            @Says("How much of the panel, or of each bay named, it covers")
            @Measured(value = Dimension.SHARE, from = "0 %", to = "100 %") Optional<Quantity> coverage,
            @Says("Ribs, fixings, holes and covers that it lies on, such as 'seat bolt 1'; 'none' when it stops short")
            Optional<List<String>> over,
            @Says("Its thickness, when measured")
            @Measured(value = Dimension.LENGTH, from = "0.05 mm", to = "200 mm") Optional<Quantity> thickness,
            @Says("How it is held, where not as usual for the material") Optional<Material.Bonding> bonding) {
    }

    /** How the trim went back, and the gap that it leaves to its stops. */
    public record TrimBack(
            Fit back,
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "100 mm") Optional<Quantity> gap) {

        /** Whether it needed force. */
        public enum Fit { FREELY, WITH_FORCE, NOT_BACK }
    }

    /** How a moving part went through its travel. */
    public enum Travel { FREE, TOUCHES, NOT_TRIED }

    /** How water left by the drains. */
    public enum Drains { RUN, BLOCKED, NOT_TRIED }
}
