package unthrum.derive;

import java.util.LinkedHashMap;
import java.util.Map;
import unthrum.physics.Band;
import unthrum.physics.Bay;
import unthrum.physics.Excitation;
import unthrum.physics.Skin;
import unthrum.survey.Aim;
import unthrum.survey.Survey;

/** The bands in which the client wants quiet, each with its share of the weight: the first aim weighs most. */
record Demand(Map<Band, Double> bands) {

    static Demand of(Survey survey, Answers answers) {
        Map<Band, Double> bands = new LinkedHashMap<>();
        double total = 0;
        int rank = 1;
        for (Aim aim : survey.aims()) {
            Band band = AimBand.of(aim, survey, answers).orElse(null);
            if (band != null) {
                bands.merge(band, 1.0 / rank, Double::sum);
                total += 1.0 / rank;
            }
            rank++;
        }
        if (bands.isEmpty()) {
            return new Demand(Map.of(Band.ROAD_DRUMMING, 1.0));
        }
        double sum = total;
        bands.replaceAll((band, weight) -> weight / sum);
        return new Demand(bands);
    }

    /** How strongly a bay answers to what the client wants quiet, by expected modes for each kg/m². */
    double drive(Skin skin, Bay bay) {
        double drive = 0;
        for (Map.Entry<Band, Double> band : bands.entrySet()) {
            drive += band.getValue() * Excitation.drive(skin, bay, band.getKey());
        }
        return drive;
    }
}
