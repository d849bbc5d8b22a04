package unthrum.survey;

import java.util.List;
import java.util.Optional;
import unthrum.reading.Count;
import unthrum.reading.Says;

/** A surveyed vehicle with the client's aims and bounds. What is absent is unknown, never zero. */
@Says("What was found and measured on a stripped vehicle, with the client's aims, stock and limits")
public record Survey(
        @Says("A name for the job") String survey,
        VehicleEntry vehicle,
        @Says("What the client wants to gain, the weightiest first") List<Aim> aims,
        Optional<Limits> limits,
        @Says("What already lies on the shelf") Optional<List<StockEntry>> stock,
        @Count(min = 1) List<PanelEntry> panels) {
}
