package unthrum.physics;

/**
 * Sol-air temperature: the outside air temperature that would heat a surface as sun and air do together,
 * t = t_air + (αI − εΔR)/h. ASHRAE Handbook Fundamentals, chapter on heat gain. The surface itself stays cooler
 * than this if heat leaves it inward.
 */
public final class SolAir {
    /** Sky loss of a level face under a clear sky, W/m² (ASHRAE, recalled: about 4 K); nought for an upright face. */
    public static final double LEVEL_SKY_LOSS = 63;

    /** Film coefficient of a summer surface in light wind, W/(m²·K) (ASHRAE, recalled). */
    public static final double SUMMER_FILM = 17;

    private SolAir() {
    }

    /**
     * @param airCelsius  outside air, °C
     * @param absorptance of the paint for sunlight, about 0.45 light to 0.9 dark
     * @param irradiance  sun on the face, W/m²
     * @param skyLoss     long-wave loss to the sky times emissivity, εΔR, W/m²
     * @param film        outside film coefficient h, W/(m²·K); 1/h is the outer surface resistance to use with it
     * @return sol-air temperature, °C
     */
    public static double temperature(
            double airCelsius, double absorptance, double irradiance, double skyLoss, double film) {
        Bounds.celsius("outside air", airCelsius);
        double gain = Bounds.share("absorptance", absorptance) * Bounds.notNegative("irradiance", irradiance);
        return airCelsius + (gain - Bounds.notNegative("sky loss", skyLoss)) / Bounds.positive("film", film);
    }
}
