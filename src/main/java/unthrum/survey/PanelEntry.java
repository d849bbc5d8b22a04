package unthrum.survey;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Between;
import unthrum.reading.Count;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** One skin area between its edges, as surveyed. A list that is absent is unknown; 'none' says there is nothing. */
public record PanelEntry(
        @Says("A name of its own for the panel") String panel,
        Zone zone,
        Optional<Skin> skin,
        @Says("The two sides, edge to edge: the first along the panel, the second across it")
        @Count(min = 2, max = 2)
        @Measured(value = Dimension.LENGTH, from = "30 mm", to = "12 m") List<Quantity> size,
        @Says("Flat, or how far the middle stands above the edges") Optional<Shape> shape,
        @Says("Whatever stiffens the panel along a line") Optional<List<Rib>> ribs,
        @Says("What the middle answers to a knuckle: one word for the panel, or one for each bay in order")
        Optional<List<Tap>> tap,
        @Says("How the bare bays die away after a knock, where that was measured") Optional<List<Decay>> decay,
        @Says("Bare metal to whatever comes back over it")
        @Measured(value = Dimension.LENGTH, from = "0 mm", to = "500 mm") Optional<Quantity> clearance,
        @Says("What the clearance was measured to") Optional<Face> clearanceTo,
        Optional<Heat> heat,
        @Says("How much of it can be reached and cleaned") Optional<Reach> reach,
        @Says("What keeps a hand away, in your own words") Optional<String> inTheWay,
        @Says("The share of the panel that can be reached when the reach is part")
        @Measured(value = Dimension.SHARE, from = "1 %", to = "100 %") Optional<Quantity> reachable,
        Optional<List<Opening>> openings,
        Optional<List<Fixing>> fixings,
        @Says("Whether the lining bears on the ribs when it is back") Optional<Boolean> liningOnRibs,
        @Says("What moves nearby and must keep its travel") Optional<List<MovingPart>> moving,
        @Says("Parts that come off for service on this panel") Optional<List<Cover>> covers,
        @Says("Whether the whole panel lifts out for service") Optional<Boolean> liftsOut,
        @Says("What lies on, in or behind it") Optional<List<Hazard>> behind,
        Optional<Wetness> wet,
        @Says("Whether a wet place can dry out again") Optional<Boolean> driesOut,
        Optional<SurfaceEntry> surface,
        @Says("What passes over the finished face") Optional<Traffic> traffic,
        @Says("Whether a head sits or sleeps within an arm's length") Optional<Boolean> nearEar,
        Optional<NoiseSource> nearNoise,
        @Says("When the panel is a hinged lid: what holds it up") Optional<Lid> lid,
        @Says("Factory parts that are no longer there") Optional<List<Missing>> missing,
        @Says("What rattles here") Optional<List<Loose>> loose,
        @Says("Rules that the fitter sets aside on this panel, each with the reason") Optional<List<Overrule>> overrules,
        Optional<String> note) {

    /** The sheet metal. */
    public record Skin(
            Metal metal,
            @Measured(value = Dimension.LENGTH, from = "0.3 mm", to = "6 mm") Optional<Quantity> gauge) {
    }

    /** How one bare bay dies away: the time to fall by 60 dB with its frequency, or a loss factor. */
    public record Decay(
            @Says("The bay, counted as for the tap") @Between(from = 1, to = 1000) int bay,
            @Says("The time in which its note falls by 60 dB")
            @Measured(value = Dimension.TIME, from = "0.01 s", to = "60 s") Optional<Quantity> time,
            @Says("What it measured instead of a time")
            @Measured(value = Dimension.NUMBER, from = "0.0001", to = "1") Optional<Quantity> lossFactor,
            @Says("The frequency of the note")
            @Measured(value = Dimension.FREQUENCY, from = "5 Hz", to = "5 kHz") Optional<Quantity> at) {
    }

    /** How the panel is curved. */
    public record Shape(
            Curve curve,
            @Says("How far the middle stands above the edges")
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "1 m") Optional<Quantity> rise,
            @Says("The radius, when that is what was measured")
            @Measured(value = Dimension.LENGTH, from = "50 mm", to = "200 m") Optional<Quantity> radius,
            @Says("Of a crown that differs both ways: the gap under a straight edge laid along the panel")
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "1 m") Optional<Quantity> riseAlong,
            @Says("The gap under a straight edge laid across it")
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "1 m") Optional<Quantity> riseAcross,
            @Says("The rise at the far end of a rolled panel that gets flatter or rounder along it")
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "1 m") Optional<Quantity> farRise) {
    }

    /** One stiffening line; 'at' is its middle, measured from the panel's start along the side it divides. */
    public record Rib(
            RibKind kind,
            Run runs,
            @Measured(value = Dimension.LENGTH, from = "1 mm", to = "12 m") Quantity at,
            @Measured(value = Dimension.LENGTH, from = "2 mm", to = "500 mm") Optional<Quantity> width,
            @Says("How tall it stands") @Measured(value = Dimension.LENGTH, from = "0.5 mm", to = "300 mm")
            Optional<Quantity> height,
            @Says("The shape of a bead") Optional<BeadShape> section,
            @Says("How far from the edges a bead ends; 0 mm when it runs to them")
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "1 m") Optional<Quantity> stopsShort) {
    }

    /** Where the heat comes from and how hot the metal gets. */
    public record Heat(
            HeatSource from,
            @Measured(value = Dimension.TEMPERATURE, from = "-20 degC", to = "900 degC") Optional<Quantity> peak) {
    }

    /** A hole. */
    public record Opening(
            OpeningKind kind,
            @Says("Its diameter, or the longer side")
            @Measured(value = Dimension.LENGTH, from = "1 mm", to = "3 m") Optional<Quantity> size,
            @Says("How many there are") @Between(from = 1, to = 500) Optional<Integer> count,
            Optional<OpeningState> state,
            @Says("Whether it must stay open; drains, breathers and vents always must")
            Optional<Boolean> mustStayOpen,
            @Says("Its middle: along, then across the panel; one hole for each entry with a place")
            @Count(min = 2, max = 2)
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "12 m") Optional<List<Quantity>> at) {
    }

    /** Something clipped, bolted or bearing on the metal. */
    public record Fixing(
            FixingKind kind,
            @Says("Its middle: along, then across the panel")
            @Count(min = 2, max = 2)
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "12 m") Optional<List<Quantity>> at,
            @Says("The diameter of the face that clamps")
            @Measured(value = Dimension.LENGTH, from = "1 mm", to = "1 m") Optional<Quantity> size,
            @Between(from = 1, to = 500) Optional<Integer> count) {
    }

    /** A part that comes off for service. */
    public record Cover(
            CoverKind kind,
            @Count(min = 2, max = 2)
            @Measured(value = Dimension.LENGTH, from = "10 mm", to = "3 m") Optional<List<Quantity>> size,
            @Says("Its middle: along, then across the panel")
            @Count(min = 2, max = 2)
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "12 m") Optional<List<Quantity>> at) {
    }

    /** A hinged lid. */
    public record Lid(
            Holder holder,
            @Says("The mass that the springs or struts still bear")
            @Measured(value = Dimension.MASS, from = "0 kg", to = "100 kg") Optional<Quantity> margin) {
    }

    /** The state of the metal's face. */
    public record SurfaceEntry(
            Optional<Paint> paint,
            Optional<Dirt> dirt,
            Optional<Rust> rust,
            @Says("What an earlier hand left") Optional<OldLayer> old) {
    }
}
