package limbway.model.light;

import java.time.Instant;
import java.time.ZoneOffset;

import limbway.model.enclosure.Site;

/**
 * Sunlight on open ground under a sky without clouds: the strongest that a site gets for long, so what is judged by it is
 * judged for the worst case.
 *
 * @param linkeTurbidity how hazy the sky is: the number of clean dry atmospheres that would weaken the beam as much, 1 to
 *     10; about 3 in temperate air, 4 to 5 in the humid tropics (from memory)
 * @source Ineichen and Perez 2002, Solar Energy 73:151-157, in the form that the public solar library pvlib gives; air mass
 *     by Kasten and Young 1989; distance of the sun by Spencer 1971; pressure by the standard atmosphere
 * @validity the air mass is that of the sun's true altitude, not lifted by refraction: below 5 degrees the beam is too weak.
 *     Above about 5,000 m of height the formula gives more than reaches the air
 */
public record ClearSky(double linkeTurbidity) {

    /** Light of the sun above the air at its mean distance [W/m2]: Kopp and Lean 2011, from memory. */
    public static final double SOLAR_CONSTANT_W_PER_M2 = 1361;

    /**
     * Checks the haze.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public ClearSky {
        if (!(linkeTurbidity >= 1 && linkeTurbidity <= 10)) {
            throw new IllegalArgumentException("clear sky: linkeTurbidity = " + linkeTurbidity + ", allowed 1 to 10");
        }
    }

    /**
     * The light of one moment.
     *
     * @param site where; its height above the sea counts
     * @param moment when
     * @return the light, {@link Irradiance#NIGHT} while the middle of the sun is not above the level
     */
    public Irradiance at(Site site, Instant moment) {
        SunPosition sun = SunPosition.at(site, moment);
        int dayOfYear = moment.atZone(ZoneOffset.UTC).getDayOfYear();
        return of(sun, dayOfYear, site.elevationM());
    }

    /**
     * The light under a sun whose place is known.
     *
     * @param sun where the sun stands
     * @param dayOfYear 1 to 366
     * @param elevationM height above the sea [m], -500 to 9000
     * @return the light, {@link Irradiance#NIGHT} while the middle of the sun is not above the level
     */
    public Irradiance of(SunPosition sun, int dayOfYear, double elevationM) {
        if (!(sun.altitudeDeg() > 0)) {
            return Irradiance.NIGHT;
        }
        double airMass = airMass(sun.altitudeDeg()) * pressureShare(elevationM);
        double aboveAir = SOLAR_CONSTANT_W_PER_M2 * distanceFactor(dayOfYear);
        double cosZenith = StrictMath.sin(Math.toRadians(sun.altitudeDeg()));
        return throughAir(cosZenith, airMass, elevationM, aboveAir);
    }

    /**
     * The formula of Ineichen and Perez.
     *
     * @param cosZenith cosine of the angle between sun and zenith, above 0
     * @param airMass air that the beam passes, 1 for a sun in the zenith over the sea
     * @param elevationM height above the sea [m]
     * @param aboveAirWPerM2 light above the air on a surface that faces the sun [W/m2]
     * @return the light on the ground
     */
    Irradiance throughAir(double cosZenith, double airMass, double elevationM, double aboveAirWPerM2) {
        double lowHaze = StrictMath.exp(-elevationM / 8000);
        double highHaze = StrictMath.exp(-elevationM / 1250);
        double gain = 5.09e-5 * elevationM + 0.868;
        double loss = 3.92e-5 * elevationM + 0.0387;
        double global = gain
                * aboveAirWPerM2
                * cosZenith
                * StrictMath.exp(-loss * airMass * (lowHaze + highHaze * (linkeTurbidity - 1)));
        double beam =
                aboveAirWPerM2 * (0.664 + 0.163 / lowHaze) * StrictMath.exp(-0.09 * airMass * (linkeTurbidity - 1));
        double leastDiffuse = (0.1 - 0.2 * StrictMath.exp(-linkeTurbidity)) / (0.1 + 0.882 / lowHaze);
        double beamLimit = global * (1 - leastDiffuse) / cosZenith;
        beam = Math.min(beam, beamLimit);
        return new Irradiance(beam, Math.max(0, global - beam * cosZenith), global);
    }

    /**
     * Air that a beam passes, relative to a sun in the zenith.
     *
     * @param altitudeDeg height of the sun above the level [degrees], 0 to 90
     * @return 1 to 38
     * @source Kasten and Young 1989, Applied Optics 28:4735-4738
     */
    public static double airMass(double altitudeDeg) {
        double sin = StrictMath.sin(Math.toRadians(altitudeDeg));
        return 1 / (sin + 0.50572 * StrictMath.pow(altitudeDeg + 6.07995, -1.6364));
    }

    /**
     * How much stronger the sun is on a day than at its mean distance.
     *
     * @param dayOfYear 1 to 366
     * @return 0.966 to 1.035
     * @source Spencer 1971
     */
    public static double distanceFactor(int dayOfYear) {
        double b = 2 * Math.PI * (dayOfYear - 1) / 365;
        return 1.00011
                + 0.034221 * StrictMath.cos(b)
                + 0.00128 * StrictMath.sin(b)
                + 0.000719 * StrictMath.cos(2 * b)
                + 0.000077 * StrictMath.sin(2 * b);
    }

    /** Pressure over that at the sea in the standard atmosphere, as pvlib computes it. */
    private static double pressureShare(double elevationM) {
        return StrictMath.pow((44331.514 - elevationM) / 11880.516, 1 / 0.1902632) / 1013.25;
    }
}
