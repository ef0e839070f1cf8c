package limbway.reports.data;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.heat.MemberDay;
import limbway.model.shade.ShadeYear;
import limbway.reports.measure.DayShade;
import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeByHour;
import limbway.reports.measure.ShadeMap;
import limbway.reports.measure.SupportHeat;

/** A year of shade as tables: by day, by month and hour, by platform and month, every moment, and the map. */
public final class ShadeTables {

    private ShadeTables() {}

    /**
     * All tables.
     *
     * @param year which platforms lay in shade when
     * @param map hours of shade on ground and decks
     * @param heat how hot supports get; empty where nobody knows
     * @return tables in a fixed order
     */
    public static List<CsvTable> of(ShadeYear year, ShadeMap map, Optional<SupportHeat> heat) {
        List<CsvTable> tables =
                new ArrayList<>(List.of(days(year), hours(year), platforms(year), moments(year), map(map)));
        heat.ifPresent(known -> tables.add(heat(known)));
        return tables;
    }

    private static CsvTable days(ShadeYear year) {
        CsvTable table = new CsvTable(
                "shade_days",
                "one day of the year",
                List.of(
                        Field.text("date", "YYYY-MM-DD"),
                        Field.whole("sun_min", "time in which shade is asked for [min]"),
                        Field.whole("breach_min", "part of it with too few platforms in shade [min]"),
                        Field.whole("fewest_shaded", "fewest platforms in shade at once while shade is asked for"),
                        Field.whole("fewest_shaded_min", "time with so few [min]")));
        for (DayShade day : DayShade.of(year)) {
            table.row(day.date(), day.sunMinutes(), day.breachMinutes(), day.fewest(), day.fewestMinutes());
        }
        return table;
    }

    private static CsvTable hours(ShadeYear year) {
        CsvTable table = new CsvTable(
                "shade_hours",
                "one hour of the day in one month, where there is sun",
                List.of(
                        Field.whole("month", "1 to 12"),
                        Field.whole("hour", "hour of standard time in which it begins, 0 to 23"),
                        Field.whole(
                                "sun_min", "time in which shade is asked for, all days of the month together [min]"),
                        Field.whole("breach_min", "part of it with too few platforms in shade [min]"),
                        Field.whole("fewest_shaded", "fewest platforms in shade at once")));
        ShadeByHour shade = ShadeByHour.of(year);
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            for (int hour : shade.hoursWithSun()) {
                if (shade.fewest(month, hour).isPresent()) {
                    table.row(
                            month + 1,
                            hour,
                            shade.sunMinutes(month, hour),
                            shade.breachMinutes(month, hour),
                            shade.fewest(month, hour).getAsInt());
                }
            }
        }
        return table;
    }

    private static CsvTable platforms(ShadeYear year) {
        CsvTable table = new CsvTable(
                "platform_months",
                "one platform in one month",
                List.of(
                        Field.text("platform", "name of the platform"),
                        Field.whole("month", "1 to 12"),
                        Field.whole("sun_min", "time in which shade is asked for [min]"),
                        Field.whole("shaded_min", "part of it in which the platform is in shade [min]")));
        for (PlatformShade platform : PlatformShade.of(year)) {
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                table.row(
                        platform.platform(),
                        month + 1,
                        platform.sunMinutesByMonth().get(month),
                        platform.shadedMinutesByMonth().get(month));
            }
        }
        return table;
    }

    private static CsvTable moments(ShadeYear year) {
        List<Field> fields = new ArrayList<>(List.of(
                Field.text("date", "YYYY-MM-DD"),
                Field.text("time", "standard time, HH:MM"),
                Field.whole("shaded", "platforms in shade"),
                Field.yesNo("breach", "whether they are too few")));
        for (String platform : year.platforms()) {
            fields.add(Field.yesNo("shaded:" + platform, "whether " + platform + " is in shade"));
        }
        CsvTable table = new CsvTable("shade_moments", "one moment at which shade is asked for", fields);
        for (int day = 0; day < year.calendar().days(); day++) {
            for (int slot = 0; slot < year.calendar().slots(); slot++) {
                if (year.isSunUp(day, slot)) {
                    table.row(moment(year, day, slot).toArray());
                }
            }
        }
        return table;
    }

    private static List<Object> moment(ShadeYear year, int day, int slot) {
        List<Object> cells = new ArrayList<>();
        cells.add(year.calendar().date(day));
        cells.add(LocalTime.MIDNIGHT.plusMinutes((long) slot * year.calendar().stepMin()));
        cells.add(year.shadedCount(day, slot));
        cells.add(year.isBreach(day, slot));
        for (int platform = 0; platform < year.platforms().size(); platform++) {
            cells.add(year.isShaded(platform, day, slot));
        }
        return cells;
    }

    private static CsvTable map(ShadeMap map) {
        CsvTable table = new CsvTable(
                "shade_map",
                "one cell of the ground or of a deck",
                List.of(
                        Field.text("on", "name of the deck; empty for the ground"),
                        Field.number("x_m", "middle of the cell, metres east [m]"),
                        Field.number("y_m", "middle of the cell, metres north [m]"),
                        Field.number("size_m", "side of the cell [m]"),
                        Field.number("year_h", "hours of shade a day, averaged over the year [h]"),
                        Field.number("day_h", "hours of shade on " + map.day() + " [h]")));
        rows(table, map.ground());
        map.decks().forEach(deck -> rows(table, deck));
        return table;
    }

    private static CsvTable heat(SupportHeat heat) {
        CsvTable table = new CsvTable(
                "support_heat",
                "one support at the middle of one hour of " + heat.clock().toLocalDate(),
                List.of(
                        Field.text("support", "name of the support, the hottest first"),
                        Field.text("surface", "surface that it is taken to have"),
                        Field.number("diameter_m", "mean thickness [m]"),
                        Field.whole("hour", "hour by the clocks of the site, 0 to 23"),
                        Field.number("mean_c", "temperature round it, mean along it [°C]"),
                        Field.number("hottest_c", "the same at its hottest point [°C]"),
                        Field.number("sunny_side_c", "upper bound of the side to the sun there [°C]")));
        for (MemberDay member : heat.hottestFirst()) {
            for (int hour = 0; hour < member.meanC().size(); hour++) {
                table.row(
                        member.supportId(),
                        member.surface().word(),
                        CsvTable.number(member.diameterM(), 4),
                        hour,
                        CsvTable.number(member.meanC().get(hour), 2),
                        CsvTable.number(member.hottestC().get(hour), 2),
                        CsvTable.number(member.sunnySideC().get(hour), 2));
            }
        }
        return table;
    }

    private static void rows(CsvTable table, ShadeMap.Area area) {
        for (ShadeMap.Cell cell : area.cells()) {
            table.row(
                    area.name(),
                    CsvTable.number(cell.xM(), 3),
                    CsvTable.number(cell.yM(), 3),
                    CsvTable.number(area.sizeM(), 2),
                    CsvTable.number(cell.yearH(), 3),
                    CsvTable.number(cell.dayH(), 3));
        }
    }
}
