package unthrum.effect;

import unthrum.facts.Vehicle;
import unthrum.knowledge.Knowledge;
import unthrum.survey.Body;
import unthrum.survey.Zone;

/** How high a zone usually sits above the ground: part of the way from the floor to the roof of the body. */
record Heights(double floor, double roof, double between) {

    static Heights of(Vehicle vehicle, Knowledge knowledge) {
        return new Heights(floor(vehicle.body(), knowledge), roof(vehicle.body(), knowledge),
                knowledge.number("usual/side-height-share"));
    }

    private static double floor(Body body, Knowledge knowledge) {
        return switch (body) {
            case HATCHBACK, SALOON, ESTATE -> knowledge.number("usual/car-floor-height");
            case VAN, HIGH_ROOF_VAN, PICK_UP, OFF_ROADER -> knowledge.number("usual/van-floor-height");
            case BUS -> knowledge.number("usual/bus-floor-height");
        };
    }

    private static double roof(Body body, Knowledge knowledge) {
        return switch (body) {
            case HATCHBACK, SALOON, ESTATE -> knowledge.number("usual/car-roof-height");
            case PICK_UP, OFF_ROADER -> knowledge.number("usual/off-roader-roof-height");
            case VAN -> knowledge.number("usual/van-roof-height");
            case HIGH_ROOF_VAN -> knowledge.number("usual/high-roof-height");
            case BUS -> knowledge.number("usual/bus-roof-height");
        };
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
