package unthrum.material;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import unthrum.reading.Between;
import unthrum.reading.Count;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Money;
import unthrum.reading.Quantity;
import unthrum.reading.Says;
import unthrum.survey.OpeningKind;

/**
 * A generic material of one layer kind. Every property is typical unless it is named under {@code published};
 * the data sheet of the product at hand overrides it.
 */
public record Material(
        @Says("The name used in surveys and plans") String material,
        @Says("What it is, in one line") String is,
        Layer layer,
        @Measured(value = Dimension.LENGTH, from = "0.05 mm", to = "100 mm") Quantity thickness,
        @Measured(value = Dimension.SURFACE_DENSITY, from = "0 kg/m2", to = "20 kg/m2") Quantity surfaceDensity,
        @Says("The coldest and the hottest that it bears in service")
        @Measured(value = Dimension.TEMPERATURE, from = "-80 degC", to = "1000 degC") Quantity serviceFrom,
        @Measured(value = Dimension.TEMPERATURE, from = "-80 degC", to = "1000 degC") Quantity serviceTo,
        @Says("The coldest surface on which its adhesive grabs")
        @Measured(value = Dimension.TEMPERATURE, from = "-20 degC", to = "60 degC") Optional<Quantity> bondsFrom,
        Cell cell,
        @Says("Its stated burning rate; absent when there is no statement")
        @Measured(value = Dimension.BURN_RATE, from = "0 mm/min", to = "1000 mm/min") Optional<Quantity> burnRate,
        Bonding bonding,
        @Says("Whether it comes off again without harm") boolean removable,
        Form form,
        @Says("One sheet or tile, or the width of the roll and its length")
        @Measured(value = Dimension.LENGTH, from = "10 mm", to = "100 m") @Count(min = 2, max = 2) List<Quantity> size,
        @Says("Sheets, tiles, rolls or pieces in a pack") @Between(from = 1, to = 1000) int inPack,
        @Says("The price of a pack, an invented typical one") Money price,
        @Measured(value = Dimension.CONDUCTIVITY, from = "0.005 W/mK", to = "400 W/mK")
        Optional<Quantity> conductivity,
        @Says("How much of a black face's heat its inner face gives off")
        @Measured(value = Dimension.SHARE, from = "1 %", to = "100 %") Optional<Quantity> emissivity,
        @Says("Whether its face bears feet, tools and dragged loads") Optional<Boolean> bearsWear,
        @Says("Whether its pile, pattern or grain must run one way: along a roll, along the second size of a sheet")
        Optional<Boolean> runsOneWay,
        @Says("The kinds of hole that it closes, where it is a piece or a strip for holes")
        Optional<List<OpeningKind>> closes,
        @Says("The dynamic modulus that makes it a spring under a barrier")
        @Measured(value = Dimension.STIFFNESS, from = "0.001 MPa", to = "100 MPa") Optional<Quantity> springModulus,
        Optional<DampingData> damping,
        @Says("Properties that are published, each with its source; all others are typical")
        Map<String, String> published) {

    /** What its pores are like. */
    public enum Cell { SOLID, CLOSED, OPEN, FIBRE }

    /** How it is held. */
    public enum Bonding {
        SELF_ADHESIVE("self-adhesive"), CONTACT_ADHESIVE("contact adhesive"), LOOSE("loose"), FASTENED("fastened");

        private final String word;

        Bonding(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }

        /** Whether it needs a clean face to stick to. */
        public boolean sticks() {
            return this == SELF_ADHESIVE || this == CONTACT_ADHESIVE;
        }
    }

    /** How it is sold. */
    public enum Form { SHEET, ROLL, TILE, PIECE }

    /**
     * A damping sheet's viscoelastic core and its stiff facing: shear modulus and loss factor at each temperature,
     * all at one reference frequency, and how temperature stands in for frequency.
     */
    public record DampingData(
            @Measured(value = Dimension.LENGTH, from = "0 mm", to = "2 mm") Quantity facing,
            @Measured(value = Dimension.STIFFNESS, from = "0 MPa", to = "300 GPa") Quantity facingModulus,
            @Measured(value = Dimension.FREQUENCY, from = "1 Hz", to = "10 kHz") Quantity at,
            @Says("How warmth does what lower frequency does") Shift shift,
            @Count(min = 2) List<Point> points) {

        /** The Williams-Landel-Ferry shift lg a = -c1 (T - T0)/(c2 + T - T0). */
        public record Shift(
                @Says("T0") @Measured(value = Dimension.TEMPERATURE, from = "-100 degC", to = "200 degC") Quantity at,
                @Says("Decades") @Measured(value = Dimension.NUMBER, from = "1", to = "50") Quantity c1,
                @Says("Kelvin") @Measured(value = Dimension.NUMBER, from = "20", to = "500") Quantity c2,
                @Says("Where it comes from: a source of the rule base, or from-memory") String source) {
        }

        /** Shear modulus and loss factor at one temperature. */
        public record Point(
                @Measured(value = Dimension.TEMPERATURE, from = "-60 degC", to = "200 degC") Quantity temperature,
                @Measured(value = Dimension.STIFFNESS, from = "0.001 MPa", to = "5 GPa") Quantity shearModulus,
                @Measured(value = Dimension.NUMBER, from = "0", to = "3") Quantity lossFactor) {
        }
    }

    /** By the name, which is its own: layups are looked up by the thousand. */
    @Override
    public int hashCode() {
        return material.hashCode();
    }

    /** Thermal resistance of the layer alone in m²K/W: thickness over conductivity (ISO 6946); 0 if unknown. */
    public double thermalResistance() {
        return conductivity.map(k -> thickness.si() / k.si()).orElse(0.0);
    }

    /** Mass over volume in kg/m³. */
    public double density() {
        return surfaceDensity.si() / thickness.si();
    }

    /** The area of a pack in m². */
    public double packArea() {
        return inPack * size.get(0).si() * size.get(1).si();
    }
}
