package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import limbway.model.heat.HotHour;
import limbway.model.heat.MemberDay;
import limbway.model.shade.RoofAnswer;
import limbway.model.shade.ShadeYear;
import limbway.reports.measure.PlatformShade;
import limbway.reports.measure.ShadeByHour;
import limbway.reports.measure.SupportHeat;
import limbway.reports.page.ShadeReport;
import limbway.reports.words.Figures;
import limbway.reports.words.HeatText;
import limbway.reports.words.Hours;
import limbway.reports.words.RoofText;
import limbway.reports.words.ShadeText;
import limbway.reports.words.WrappedLines;

/** The answer of a year of shade as lines of a terminal. */
final class ShadeLines {

    private static final int MOST_PLATFORMS = 20;
    private static final int MOST_HOT = 4;
    private static final int NAME_WIDTH = 24;

    private final ShadeReport report;
    private final WrappedLines lines = new WrappedLines();

    private ShadeLines(ShadeReport report) {
        this.report = report;
    }

    static List<String> of(ShadeReport report) {
        ShadeLines lines = new ShadeLines(report);
        lines.verdict();
        report.info().notes().forEach(note -> lines.add("  note: " + note));
        lines.table();
        lines.platforms();
        lines.roof();
        report.heat().ifPresent(lines::heat);
        lines.add(ShadeText.standardTime(report.year().calendar()));
        return lines.lines.all();
    }

    private void verdict() {
        ShadeYear year = report.year();
        add(report.info().layout() + ": the shade rule is " + ShadeText.verdict(year));
        add("  asked: " + ShadeText.rule(year.rule()));
        if (!report.isKept()) {
            add("  broken " + ShadeText.when(year));
        } else if (report.hasSun()) {
            add("  hardest day: " + Hours.day(report.hardest().date()) + ", with "
                    + report.hardest().fewest() + " in shade at once for "
                    + Hours.text(report.hardest().fewestMinutes()));
        }
    }

    private void add(String text) {
        lines.add(text);
    }

    private void table() {
        if (report.isKept() || report.roof() instanceof RoofAnswer.TooFewPlatforms) {
            return;
        }
        add("minutes with too few in shade, by month and hour (. none; empty: no sun to count):");
        StringBuilder head = new StringBuilder("       ");
        for (int month = 0; month < ShadeByHour.MONTHS; month++) {
            head.append("   ").append(ShadeText.MONTHS.get(month));
        }
        lines.row(head.toString());
        int[] hours = report.hours().hoursInBreach();
        for (int hour = hours[0]; hour <= hours[hours.length - 1]; hour++) {
            StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "  %02d:00", hour));
            for (int month = 0; month < ShadeByHour.MONTHS; month++) {
                row.append(String.format(Locale.ROOT, "%6s", cell(month, hour)));
            }
            lines.row(row.toString().stripTrailing());
        }
    }

    private String cell(int month, int hour) {
        int breach = report.hours().breachMinutes(month, hour);
        return breach > 0 ? Integer.toString(breach) : report.hours().sunMinutes(month, hour) > 0 ? "." : "";
    }

    private void platforms() {
        if (report.platforms().isEmpty()) {
            lines.row("there is no platform in this layout");
            return;
        }
        add("platforms, time in shade while the sun is up"
                + (report.isKept() ? ":" : "; how much of the breach would end if this one always lay in shade:"));
        int shown = Math.min(MOST_PLATFORMS, report.platforms().size());
        for (PlatformShade platform : report.platforms().subList(0, shown)) {
            String line = String.format(
                    Locale.ROOT,
                    "  %-" + NAME_WIDTH + "s %8s h %6s",
                    platform.platform(),
                    Figures.decimals(platform.shadedMinutes() / 60.0, 0),
                    Figures.percent(platform.share()));
            lines.row(report.isKept() ? line : line + "   " + mended(platform));
        }
        if (shown < report.platforms().size()) {
            lines.row("  and " + (report.platforms().size() - shown) + " more; --json tells all");
        }
    }

    private void roof() {
        if (report.toTry().isEmpty() && !report.isKept()) {
            add("to mend: " + RoofText.of(report.roof()));
        }
        report.toTry().ifPresent(roof -> {
            add("to mend: " + RoofText.of(report.roof()) + " To try it, add under covers:");
            RoofText.asScenario(roof).forEach(line -> lines.row("  " + line));
        });
    }

    private void heat(SupportHeat heat) {
        add("hottest supports on " + Hours.day(heat.clock().toLocalDate())
                + ", when bare steel in the open gets hottest at "
                + heat.clock().toLocalTime() + " by the clock, with "
                + HeatText.conditions(heat.hour().open()) + ":");
        for (MemberDay member : heat.hottestFirst().stream().limit(MOST_HOT).toList()) {
            boolean isEven = SupportHeat.isEven(member.surface());
            int hour = member.hottestHour();
            add("  " + member.supportId() + ", " + member.surface().word() + ", "
                    + Figures.thickness(member.diameterM()) + ": "
                    + HeatText.surface(member.peakC(), member.sunnySideC().get(hour), isEven)
                    + HeatText.lag(member.isSteady()) + " at " + hour + ":30; "
                    + HeatText.burns(SupportHeat.burnsWithin(member), isEven));
        }
        add("  the same hour in the open, square to the sun, " + Figures.thickness(SupportHeat.TUBE_M)
                + " thick, still air and 1 m/s: " + compared(heat));
        add("  weather: " + heat.origin());
        add("  " + HeatText.THRESHOLDS);
    }

    private static String compared(SupportHeat heat) {
        Map<String, List<String>> bySurface = new LinkedHashMap<>();
        for (HotHour.Row row : heat.comparison()) {
            if (row.diameterM() == SupportHeat.TUBE_M) {
                bySurface
                        .computeIfAbsent(row.surface().word(), word -> new ArrayList<>())
                        .add(Figures.decimals(row.surfaceC(), 0));
            }
        }
        List<String> parts = new ArrayList<>();
        bySurface.forEach((word, degrees) -> parts.add(word + " " + String.join(" and ", degrees) + " °C"));
        return String.join(", ", parts);
    }

    private String mended(PlatformShade platform) {
        return Hours.text(platform.mendedMinutes()) + " ("
                + Figures.percent(
                        (double) platform.mendedMinutes() / report.year().breachMinutes()) + ")";
    }
}
