package unthrum.survey;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Between;
import unthrum.reading.Dimension;
import unthrum.reading.Measured;
import unthrum.reading.Quantity;
import unthrum.reading.Says;

/** The vehicle as a whole. */
public record VehicleEntry(
        Body body,
        Drive drive,
        @Says("What the vehicle is for after the job") List<Use> use,
        @Says("The year it was built") @Between(from = 1900, to = 2100) Optional<Integer> year,
        @Says("How many cylinders the engine has") @Between(from = 1, to = 16) Optional<Integer> cylinders,
        @Says("The engine speed at which it annoys")
        @Measured(value = Dimension.ROTATION, from = "300 rpm", to = "12000 rpm") Optional<Quantity> engineSpeed,
        @Says("What may still be loaded by the papers, before this job")
        @Measured(value = Dimension.MASS, from = "0 kg", to = "20000 kg") Optional<Quantity> payloadLeft,
        @Says("Air inside when people stay in it") Optional<Indoor> indoor,
        @Says("The coldest outside air it is used in")
        @Measured(value = Dimension.TEMPERATURE, from = "-50 degC", to = "30 degC") Optional<Quantity> coldest,
        @Says("Where the air was measured, how, or anything else worth writing down") Optional<String> note) {

    /** The air that people make and keep inside. */
    public record Indoor(
            @Measured(value = Dimension.TEMPERATURE, from = "-20 degC", to = "45 degC") Quantity temperature,
            @Says("Relative humidity") @Measured(value = Dimension.SHARE, from = "1 %", to = "100 %")
            Quantity humidity) {
    }
}
