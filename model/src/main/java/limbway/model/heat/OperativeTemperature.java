package limbway.model.heat;

import limbway.model.light.Irradiance;
import limbway.model.weather.Conditions;

/**
 * How warm a place feels to the surface of a body: the temperature that the air of a dark room without wind would need to
 * warm it as much. It is an index of places, not the temperature of an animal: of the sun that fur takes up, only a tenth to
 * a quarter reaches the skin.
 *
 * @param settings coat, size and ground
 * @source Campbell and Norman 1998, An Introduction to Environmental Biophysics: Te = Ta + (R - e s Ta^4) / (cp (gr + gH)),
 *     cp 29.3 J/mol K, gH = 1.4 x 0.135 sqrt(u/d), gr = 4 e s Ta^3 / cp; as a public library for thermal ecology gives it
 * @validity a body alone, dry, without metabolism and evaporation; the absorptance and size of apes are assumed
 */
public record OperativeTemperature(HeatSettings settings) {

    /** Heat of a mole of air [J/mol K]. */
    private static final double MOLAR_HEAT = 29.3;

    /** Share of a sphere's surface that its outline to the sun is. */
    private static final double BEAM_SHARE = 0.25;

    /**
     * The operative temperature of a place, the ground below it lit by as much of the beam and the sky as the place itself.
     *
     * @param open weather in the open
     * @param beamShare share of the direct beam that reaches the place, 0 to 1
     * @param skyShare share of the sky's diffuse light that reaches the place, 0 to 1; what hides the rest of the sky is
     *     taken to be as warm as the air
     * @param sunAltitudeDeg height of the sun above the level [degrees]
     * @return degrees Celsius
     */
    public double ofPlaceC(Conditions open, double beamShare, double skyShare, double sunAltitudeDeg) {
        Irradiance light = open.irradiance();
        double upright = Math.max(0, StrictMath.sin(Math.toRadians(sunAltitudeDeg)));
        double beamOnLevel = light.beamWPerM2() * upright;
        double onGround = beamShare * beamOnLevel + skyShare * light.diffuseWPerM2();
        double groundC = settings.groundC(open.airC(), onGround);
        return ofPlaceC(open, beamShare, skyShare, onGround, groundC);
    }

    /**
     * The operative temperature of a place above ground whose light and temperature are known.
     *
     * @param open weather in the open
     * @param beamShare share of the direct beam that reaches the place, 0 to 1
     * @param skyShare share of the sky's diffuse light that reaches the place, 0 to 1
     * @param onGroundWPerM2 sunlight on the ground below [W/m2], 0 or more
     * @param groundC temperature of that ground [°C]
     * @return degrees Celsius
     */
    public double ofPlaceC(Conditions open, double beamShare, double skyShare, double onGroundWPerM2, double groundC) {
        Irradiance light = open.irradiance();
        double sun = BEAM_SHARE * beamShare * light.beamWPerM2()
                + skyShare * light.diffuseWPerM2() / 2
                + settings.groundReflectance() * onGroundWPerM2 / 2;
        double above = skyShare * Thermal.blackBodyWPerM2(SkyTemperature.swinbankC(open.airC()))
                + (1 - skyShare) * Thermal.blackBodyWPerM2(open.airC());
        double rays = settings.animalEmittance() * (above + Thermal.blackBodyWPerM2(groundC)) / 2;
        return ofBodyC(open.airC(), open.windMPerS(), settings.animalAbsorptance() * sun + rays);
    }

    /**
     * The operative temperature of a body that takes up a known amount of rays.
     *
     * @param airC temperature of the air [°C]
     * @param windMPerS wind [m/s]; the least wind of the settings counts instead where it is greater
     * @param absorbedWPerM2 sun and heat rays taken up, over the whole surface [W/m2]
     * @return degrees Celsius
     */
    public double ofBodyC(double airC, double windMPerS, double absorbedWPerM2) {
        double wind = Math.max(windMPerS, settings.animalLeastWindMPerS());
        double given = settings.animalEmittance() * Thermal.blackBodyWPerM2(airC);
        double byRays = 4 * given / (airC + Thermal.ZERO_C_IN_K) / MOLAR_HEAT;
        double byAir = 1.4 * 0.135 * Math.sqrt(wind / settings.animalSizeM());
        return airC + (absorbedWPerM2 - given) / (MOLAR_HEAT * (byRays + byAir));
    }
}
