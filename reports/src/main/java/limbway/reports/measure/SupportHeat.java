package limbway.reports.measure;

import java.time.LocalDateTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.heat.ContactLimits;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.HotHour;
import limbway.model.heat.MemberDay;
import limbway.model.heat.MemberTemperatures;
import limbway.model.heat.Surface;
import limbway.model.heat.SurfaceCatalogue;
import limbway.model.shade.ShadeScene;
import limbway.model.weather.Weather;

/**
 * How hot supports get on the day of the year on which bare steel in the open gets hottest.
 *
 * @param clock that hour by the clocks of the site
 * @param hour its weather and sun
 * @param origin where the weather comes from
 * @param hottestFirst all supports through that day, the hottest first
 * @param comparison the same hour for several surfaces, thicknesses and winds, in the open and square to the sun
 */
public record SupportHeat(
        LocalDateTime clock, HotHour hour, String origin, List<MemberDay> hottestFirst, List<HotHour.Row> comparison) {

    /** Thickness of a scaffold tube [m], to which much is compared. */
    public static final double TUBE_M = 0.0483;

    private static final double SAME_M = 0.001;
    private static final List<Double> WINDS_M_PER_S = List.of(0.0, 1.0);

    /** Keeps copies of the lists. */
    public SupportHeat {
        hottestFirst = List.copyOf(hottestFirst);
        comparison = List.copyOf(comparison);
    }

    /**
     * Looks for the hottest hour and at every support on that day.
     *
     * @param enclosure what stands there
     * @param scene the same, as it casts shade
     * @param settings ground
     * @param weather weather of the site
     * @param year calendar year
     * @return temperatures
     */
    public static SupportHeat of(
            Enclosure enclosure, ShadeScene scene, HeatSettings settings, Weather weather, int year) {
        HotHour hour = HotHour.hottest(enclosure.site(), weather, settings, year);
        LocalDateTime clock = hour.moment().atZone(enclosure.site().zone()).toLocalDateTime();
        SceneLight light = new SceneLight(scene, scene.season(MonthDay.from(clock)));
        List<MemberDay> members = MemberTemperatures.of(enclosure, settings, weather, light, clock.toLocalDate())
                .hottestFirst();
        return new SupportHeat(clock, hour, weather.origin(), members, comparison(hour, settings, members));
    }

    private static List<HotHour.Row> comparison(HotHour hour, HeatSettings settings, List<MemberDay> members) {
        List<Double> diametersM = new ArrayList<>(List.of(TUBE_M));
        if (!members.isEmpty() && Math.abs(members.get(0).diameterM() - TUBE_M) > SAME_M) {
            diametersM.add(members.get(0).diameterM());
        }
        List<Surface> surfaces = List.of(
                SurfaceCatalogue.GALVANISED_OXIDISED,
                SurfaceCatalogue.BLACK_PAINT,
                SurfaceCatalogue.WHITE_PAINT,
                SurfaceCatalogue.WOOD,
                SurfaceCatalogue.ROPE);
        return hour.compare(settings, surfaces, diametersM, WINDS_M_PER_S);
    }

    /**
     * Whether the whole surface of a member shares its heat, so that the mean round it is what a hand feels.
     *
     * @param surface its surface
     * @return true for metal, painted or not
     */
    public static boolean isEven(Surface surface) {
        return surface.touch() == Surface.Touch.METAL || surface.touch() == Surface.Touch.COATED_METAL;
    }

    /**
     * The shortest touch that burns a human's skin in the hottest hour of a support; on wood, rope and stone, where the side
     * to the sun is hotter than the rest, the shortest that may.
     *
     * @param member a support through a day
     * @return how long a touch; empty if none of the known thresholds is reached
     */
    public static Optional<ContactLimits.Hold> burnsWithin(MemberDay member) {
        return burnsWithin(member.surface(), member.peakC(), member.sunnySideC().get(member.hottestHour()));
    }

    /**
     * The same of a member of the comparison.
     *
     * @param row a row of the comparison
     * @return how long a touch; empty if none of the known thresholds is reached
     */
    public static Optional<ContactLimits.Hold> burnsWithin(HotHour.Row row) {
        return burnsWithin(row.surface(), row.surfaceC(), row.sunnySideC());
    }

    private static Optional<ContactLimits.Hold> burnsWithin(Surface surface, double meanC, double sunnySideC) {
        double touchedC = isEven(surface) ? meanC : sunnySideC;
        return Arrays.stream(ContactLimits.Hold.values())
                .filter(hold -> ContactLimits.burns(surface.touch(), hold, touchedC))
                .findFirst();
    }
}
