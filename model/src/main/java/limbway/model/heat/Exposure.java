package limbway.model.heat;

import limbway.model.light.Irradiance;
import limbway.model.weather.Conditions;

/**
 * Air, light and heat rays around a member.
 *
 * @param airC temperature of the air [°C]
 * @param windMPerS wind across the member [m/s], 0 or more
 * @param beamAcrossWPerM2 direct light on the member's outline, so beam times the sine of the angle to its axis [W/m2]
 * @param skyLightWPerM2 diffuse light on a level surface [W/m2]
 * @param groundLightWPerM2 light thrown back by the ground [W/m2]
 * @param raysFromAboveWPerM2 heat rays of sky and of what hides it [W/m2]
 * @param raysFromBelowWPerM2 heat rays of the ground [W/m2]
 */
public record Exposure(
        double airC,
        double windMPerS,
        double beamAcrossWPerM2,
        double skyLightWPerM2,
        double groundLightWPerM2,
        double raysFromAboveWPerM2,
        double raysFromBelowWPerM2) {

    /**
     * What a member at a place meets, over ground lit by as much of beam and sky as the place itself.
     *
     * @param settings ground
     * @param open weather in the open
     * @param beamShare share of the direct beam that reaches the place, 0 to 1
     * @param skyShare share of the sky's diffuse light that reaches the place, 0 to 1; what hides the rest is taken to be as
     *     warm as the air
     * @param sineToAxis sine of the angle between beam and axis, 0 to 1
     * @param sunAltitudeDeg height of the sun above the level [degrees]
     * @return air, light and rays
     */
    public static Exposure of(
            HeatSettings settings,
            Conditions open,
            double beamShare,
            double skyShare,
            double sineToAxis,
            double sunAltitudeDeg) {
        Irradiance light = open.irradiance();
        double upright = Math.max(0, StrictMath.sin(Math.toRadians(sunAltitudeDeg)));
        double beam = beamShare * light.beamWPerM2();
        double sky = skyShare * light.diffuseWPerM2();
        double onGround = beam * upright + sky;
        double above = skyShare * Thermal.blackBodyWPerM2(SkyTemperature.swinbankC(open.airC()))
                + (1 - skyShare) * Thermal.blackBodyWPerM2(open.airC());
        return new Exposure(
                open.airC(),
                open.windMPerS(),
                beam * sineToAxis,
                sky,
                settings.groundReflectance() * onGround,
                above,
                Thermal.blackBodyWPerM2(settings.groundC(open.airC(), onGround)));
    }

    /**
     * The same with another direct light.
     *
     * @param other direct light on the outline [W/m2]
     * @return a copy
     */
    Exposure withBeamAcross(double other) {
        return new Exposure(
                airC, windMPerS, other, skyLightWPerM2, groundLightWPerM2, raysFromAboveWPerM2, raysFromBelowWPerM2);
    }
}
