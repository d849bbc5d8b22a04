package unthrum.survey;

/** Where in the vehicle a panel sits. */
public enum Zone {
    ROOF,
    BULKHEAD,
    TUNNEL,
    FLOOR,
    FOOTWELL,
    WHEEL_ARCH,
    SIDE,
    PILLAR,
    DOOR,
    SLIDING_DOOR,
    REAR_DOOR,
    TAILGATE,
    BONNET,
    BOOT_FLOOR,
    BOOT_LID,
    SILL,
    CAB_BACK
}
