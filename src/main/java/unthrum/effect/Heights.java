package unthrum.effect;

import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.survey.Zone;

/** How high a zone usually sits above the ground: part of the way from the floor to the roof of the body. */
record Heights(double floor, double roof, double between) {

    static Heights of(Vehicle vehicle, Knowledge knowledge) {
        String body = vehicle.body().toString().replace(' ', '-');
        return new Heights(knowledge.number("usual/floor-height-" + body),
                knowledge.number("usual/roof-height-" + body), knowledge.number("usual/side-height-share"));
    }

    double of(Zone zone) {
        return switch (zone) {
            case ROOF -> roof;
            case FLOOR, FOOTWELL, TUNNEL, WHEEL_ARCH, BOOT_FLOOR, SILL -> floor;
            case BULKHEAD, SIDE, PILLAR, DOOR, SLIDING_DOOR, REAR_DOOR, TAILGATE, BONNET, BOOT_LID, CAB_BACK ->
                    floor + between * (roof - floor);
        };
    }
}
