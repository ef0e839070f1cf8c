package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.heat.ContactLimits;
import limbway.model.heat.HotHour;
import limbway.model.heat.MemberDay;
import limbway.model.shade.Roof;
import limbway.model.shade.RoofAnswer;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeYear;
import limbway.model.shade.Shortfall;
import limbway.reports.data.RunRecord;
import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeByHour;
import limbway.reports.measure.SupportHeat;
import limbway.reports.page.ShadeReport;
import limbway.reports.words.HeatText;
import limbway.reports.words.RoofText;

/** The machine-readable answer of a year of shade: its times are standard time of the site, hours of heat those of its clocks. */
final class ShadeAnswer {

    private ShadeAnswer() {}

    static Map<String, Object> of(ShadeReport report) {
        ShadeYear year = report.year();
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("scenario", report.info().scenario());
        root.put("sha256", report.info().sha256Hex());
        root.put("layout", report.info().layout());
        root.put("year", year.calendar().year());
        root.put("step_min", year.calendar().stepMin());
        root.put("utc_offset", year.calendar().offset().getId());
        root.put("rule", rule(year.rule()));
        root.put("kept", report.isKept());
        root.put("min_shaded", year.fewestShaded());
        root.put("sun_minutes", year.sunMinutes());
        root.put("breach_minutes", year.breachMinutes());
        root.put("first_breach", year.firstBreach().map(Object::toString).orElse(null));
        root.put("worst_day", year.worstDay().map(Object::toString).orElse(null));
        root.put("worst_day_breach_minutes", report.hardest().breachMinutes());
        root.put("hardest_day", report.hardest().date().toString());
        root.put("sun_minutes_by_month", year.sunMinutesByMonth());
        root.put("breach_minutes_by_month_and_hour", year.breachMinutesByMonthAndHour());
        root.put("fewest_shaded_by_month_and_hour", fewest(report.hours()));
        root.put(
                "platforms",
                report.platforms().stream().map(ShadeAnswer::platform).toList());
        root.put("remedy", remedy(report));
        root.put("heat", report.heat().map(ShadeAnswer::heat).orElse(null));
        root.put("notes", report.info().notes());
        root.put("limbway", report.info().limbwayVersion());
        root.put("parameters", RunRecord.parameters(report.info().parameters()));
        return root;
    }

    /** Null where nothing is to be mended. */
    private static Map<String, Object> remedy(ShadeReport report) {
        if (report.toTry().isEmpty()) {
            return null;
        }
        Roof roof = report.toTry().get();
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("ends_every_breach", report.roof() instanceof RoofAnswer.Found);
        object.put("text", RoofText.of(report.roof()));
        object.put("platform", roof.platform());
        object.put("rise_m", roof.riseM());
        object.put("sides_m", List.of(roof.sideAM(), roof.sideBM()));
        object.put("area_m2", roof.areaM2());
        object.put("screens_face_deg", roof.screensFaceDeg());
        object.put("covers", RoofText.asScenario(roof));
        object.put(
                "breach_minutes_left",
                report.roof() instanceof RoofAnswer.NoneFound none
                        ? none.after().breachMinutes()
                        : 0);
        List<Object> shortfalls = new ArrayList<>();
        for (Shortfall shortfall : report.roof().shortfalls()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("platform", shortfall.platform());
            one.put("mendable_minutes", shortfall.mendableMinutes());
            one.put("other_minutes", shortfall.otherMinutes());
            one.put("missing_points", shortfall.missingPoints());
            shortfalls.add(one);
        }
        object.put("closest_first", shortfalls);
        return object;
    }

    private static Map<String, Object> heat(SupportHeat heat) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("weather", heat.origin());
        object.put("hottest_hour", heat.clock().toString());
        object.put("air_c", heat.hour().open().airC());
        object.put("wind_m_per_s", heat.hour().open().windMPerS());
        object.put("beam_w_per_m2", heat.hour().open().irradiance().beamWPerM2());
        object.put("diffuse_w_per_m2", heat.hour().open().irradiance().diffuseWPerM2());
        List<Object> supports = new ArrayList<>();
        for (MemberDay member : heat.hottestFirst()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("support", member.supportId());
            one.put("surface", member.surface().word());
            one.put("diameter_m", member.diameterM());
            one.put("hottest_c", member.peakC());
            one.put("side_to_sun_at_most_c", member.sunnySideC().get(member.hottestHour()));
            one.put("hour", member.hottestHour());
            one.put("follows_within_15_min", member.isSteady());
            one.put("burns_within", burns(SupportHeat.burnsWithin(member)));
            supports.add(one);
        }
        object.put("supports", supports);
        List<Object> rows = new ArrayList<>();
        for (HotHour.Row row : heat.comparison()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("surface", row.surface().word());
            one.put("diameter_m", row.diameterM());
            one.put("wind_m_per_s", row.windMPerS());
            one.put("surface_c", row.surfaceC());
            one.put("side_to_sun_at_most_c", row.sunnySideC());
            one.put("follows_within_15_min", row.isSteady());
            one.put("burns_within", burns(SupportHeat.burnsWithin(row)));
            rows.add(one);
        }
        object.put("comparison", rows);
        object.put("burns", HeatText.THRESHOLDS);
        return object;
    }

    private static String burns(Optional<ContactLimits.Hold> hold) {
        return hold.map(ContactLimits.Hold::word).orElse(null);
    }

    private static Map<String, Object> rule(ShadeRule rule) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("at_least", rule.atLeast());
        object.put("shaded_share", rule.leastShadedShare());
        object.put("most_beam", rule.mostBeam());
        object.put("lowest_sun_deg", rule.lowestSunDeg());
        return object;
    }

    private static List<List<Integer>> fewest(ShadeByHour hours) {
        List<List<Integer>> months = new ArrayList<>();
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            List<Integer> row = new ArrayList<>();
            for (int hour = 0; hour < ShadeByHour.HOURS; hour++) {
                var fewest = hours.fewest(month, hour);
                row.add(fewest.isPresent() ? (Integer) fewest.getAsInt() : null);
            }
            months.add(row);
        }
        return months;
    }

    private static Map<String, Object> platform(PlatformShade platform) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("name", platform.platform());
        object.put("shaded_minutes", platform.shadedMinutes());
        object.put("shaded_share", platform.share());
        object.put("shaded_minutes_by_month", platform.shadedMinutesByMonth());
        object.put("breach_minutes_ended_if_always_shaded", platform.mendedMinutes());
        return object;
    }
}
