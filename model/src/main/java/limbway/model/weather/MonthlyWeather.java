package limbway.model.weather;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;

import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;

import limbway.model.enclosure.Site;
import limbway.model.light.ClearSky;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * Weather from the usual temperatures of the twelve months, under a sky without clouds: no real day, but as much sun as any.
 *
 * <p>Between the middles of two months the temperatures run straight; the air of a day follows {@link DayCurve}. Where the
 * sun does not rise or does not set, the air stays at the mean of least and greatest temperature: an assumption.
 *
 * @param meanMaxC mean greatest temperature of a day [°C], January to December, each not below {@code meanMinC}
 * @param meanMinC mean least temperature of a day [°C], January to December
 * @param windMPerS wind at every moment [m/s], 0 to 40
 * @param linkeTurbidity haze, 1 to 10, see {@link ClearSky}
 */
public record MonthlyWeather(List<Double> meanMaxC, List<Double> meanMinC, double windMPerS, double linkeTurbidity)
        implements Weather {

    /** Wind where nothing is said of it [m/s]: still air, in which everything gets hottest. */
    public static final double UNSTATED_WIND_M_PER_S = 0;

    /** Haze where nothing is said of it, see {@link ClearSky}: temperate air. Clearer than the humid tropics. */
    public static final double UNSTATED_LINKE_TURBIDITY = 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException naming the value that is missing or outside its range
     */
    public MonthlyWeather {
        meanMaxC = List.copyOf(meanMaxC);
        meanMinC = List.copyOf(meanMinC);
        requireTwelve("meanMaxC", meanMaxC);
        requireTwelve("meanMinC", meanMinC);
        for (int i = 0; i < 12; i++) {
            if (!(meanMinC.get(i) >= -60 && meanMaxC.get(i) <= 60 && meanMinC.get(i) <= meanMaxC.get(i))) {
                throw new IllegalArgumentException("monthly weather: month " + (i + 1) + ": meanMinC = "
                        + meanMinC.get(i) + ", meanMaxC = " + meanMaxC.get(i)
                        + ", allowed -60 to 60, the least not above the greatest");
            }
        }
        if (!(windMPerS >= 0 && windMPerS <= 40)) {
            throw new IllegalArgumentException("monthly weather: windMPerS = " + windMPerS + ", allowed 0 to 40");
        }
        if (!(linkeTurbidity >= 1 && linkeTurbidity <= 10)) {
            throw new IllegalArgumentException(
                    "monthly weather: linkeTurbidity = " + linkeTurbidity + ", allowed 1 to 10");
        }
    }

    private static void requireTwelve(String name, List<Double> values) {
        if (values.size() != 12) {
            throw new IllegalArgumentException(
                    "monthly weather: " + name + " has " + values.size() + " values, allowed 12");
        }
    }

    /**
     * What is usually assumed, with unit, range and source.
     *
     * @return wind and haze
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "weather.wind",
                        "wind at every moment of weather made from monthly means",
                        "m/s",
                        windMPerS,
                        0,
                        3,
                        Standing.ASSUMPTION,
                        "still air unless stated: the worst case, and usual between walls and glass (no source)"),
                new Parameter(
                        "weather.linke-turbidity",
                        "haze of a sky without clouds",
                        "1",
                        linkeTurbidity,
                        2,
                        6,
                        Standing.UNVERIFIED,
                        "about 3 in temperate air, 4 to 5 in the humid tropics, from memory"));
    }

    @Override
    public Conditions at(Site site, Instant moment) {
        return new Conditions(airC(site, moment), windMPerS, new ClearSky(linkeTurbidity).at(site, moment));
    }

    @Override
    public String origin() {
        return "monthly means of temperature under a sky without clouds all year (the worst case)";
    }

    private double airC(Site site, Instant moment) {
        // the day is counted by the mean sun of the place, so that clocks and time zones do not matter
        ZoneOffset bySun = ZoneOffset.ofTotalSeconds((int) Math.round(site.longitudeDeg() * 240));
        OffsetDateTime time = moment.atOffset(bySun);
        LocalDate date = time.toLocalDate();
        SunriseResult today = sun(site, date, bySun);
        if (!(today instanceof SunriseResult.RegularDay light)) {
            return meanC(date);
        }
        boolean stillNight = hours(light.sunrise().toInstant(), moment) < DayCurve.LEAST_AFTER_SUNRISE_H;
        LocalDate first = stillNight ? date.minusDays(1) : date;
        SunriseResult began = stillNight ? sun(site, first, bySun) : today;
        SunriseResult next = stillNight ? today : sun(site, date.plusDays(1), bySun);
        if (!(began instanceof SunriseResult.RegularDay day && next instanceof SunriseResult.RegularDay dayAfter)) {
            return meanC(date);
        }
        Instant rise = day.sunrise().toInstant();
        Instant set = day.sunset().toInstant();
        DayCurve curve = new DayCurve(
                onDay(meanMinC, first),
                onDay(meanMaxC, first),
                onDay(meanMinC, first.plusDays(1)),
                hours(rise, set),
                hours(set, dayAfter.sunrise().toInstant()));
        return curve.airC(hours(rise, moment));
    }

    private static SunriseResult sun(Site site, LocalDate date, ZoneOffset bySun) {
        return SPA.calculateSunriseTransitSet(
                date.atTime(12, 0).atZone(bySun), site.latitudeDeg(), site.longitudeDeg(), DeltaT.estimate(date));
    }

    private double meanC(LocalDate date) {
        return (onDay(meanMinC, date) + onDay(meanMaxC, date)) / 2;
    }

    private static double hours(Instant from, Instant to) {
        return (to.toEpochMilli() - from.toEpochMilli()) / 3_600_000.0;
    }

    /** The value of a day between the middles of two months; 29 February is taken as the 28th. */
    static double onDay(List<Double> months, LocalDate date) {
        MonthDay day = MonthDay.from(date);
        int days = day.getMonth().minLength();
        double sinceMiddle = (Math.min(day.getDayOfMonth(), days) - 0.5) - days / 2.0;
        int month = day.getMonthValue() - 1;
        int other = (month + (sinceMiddle < 0 ? 11 : 1)) % 12;
        int otherDays = day.getMonth().plus(sinceMiddle < 0 ? -1 : 1).minLength();
        double share = Math.abs(sinceMiddle) / ((days + otherDays) / 2.0);
        return months.get(month) + share * (months.get(other) - months.get(month));
    }
}
