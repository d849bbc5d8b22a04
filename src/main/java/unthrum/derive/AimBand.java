package unthrum.derive;

import java.util.LinkedHashMap;
import java.util.Optional;
import unthrum.knowledge.Knowledge;
import unthrum.physics.Band;
import unthrum.physics.Excitation;
import unthrum.survey.Aim;
import unthrum.survey.Survey;
import unthrum.survey.Zone;

/** The band of frequencies that an aim speaks of. */
public final class AimBand {

    /** An engine is heard through panels up to about this multiple of its firing frequency. Common practice. */
    private static final double ENGINE_ORDERS = 4;

    private AimBand() {
    }

    /** Nothing for the aims that are no sound. */
    public static Optional<Band> of(Aim aim, Survey survey, Knowledge knowledge) {
        return of(aim, survey, new Answers(knowledge, Zone.FLOOR, new LinkedHashMap<>()));
    }

    static Optional<Band> of(Aim aim, Survey survey, Answers answers) {
        return switch (aim) {
            case ROAD_DRUMMING, RATTLES -> Optional.of(Band.ROAD_DRUMMING);
            case ENGINE_NOISE, EXHAUST_DRONE -> Optional.of(engine(survey, answers));
            case WIND_NOISE, RAIN_NOISE -> Optional.of(Band.WIND);
            case SUMMER_HEAT, WINTER_COLD, CONDENSATION -> Optional.empty();
        };
    }

    private static Band engine(Survey survey, Answers answers) {
        double revolutions = answers.quantity(survey.vehicle().engineSpeed(), "engineSpeed") * 60;
        int cylinders = answers.count(survey.vehicle().cylinders(), "cylinders", "cylinders");
        double firing = Excitation.firingFrequency(revolutions, cylinders);
        return new Band(firing / 2, firing * ENGINE_ORDERS);
    }
}
