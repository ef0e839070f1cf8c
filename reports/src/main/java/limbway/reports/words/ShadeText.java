package limbway.reports.words;

import java.util.List;

import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeYear;

/** Says what was asked of a year of shade, and what came out. */
public final class ShadeText {

    /** Why one date is not enough, and what every day leaves open. */
    public static final List<String> DOUBTFUL = List.of(
            "The rule itself is common practice in the trade, without a published source; so are its two thresholds. Move "
                    + "them and look again before you lean on a narrow result.",
            "The sky is taken to be clear whenever the sun is up: the hardest case, and the wrong one for most days of a "
                    + "rainy place.",
            "Crowns are taken as round bodies of evenly spread leaves: the real shade of a tree moves with its gaps, and a "
                    + "young tree grows. A tree dies or is cut: look at what remains without it.",
            "While the sun stands behind the land around, everything counts as shaded.",
            "Only the direct beam counts as sun. Light from the sky, and heat from ground and walls, reach places in shade.",
            "A rope or a pole hides only as much of the sun's disc as it covers, seen from the point: a few metres below it its "
                    + "shadow blurs, and no animal could use it.",
            "A platform in shade is no place to rest if it cannot be reached, is taken by another, or is hot for want of "
                    + "wind: see limbway check and limbway run.",
            "Positions of the sun are good to a few thousandths of a degree; positions on a drawing are not. Half a metre in "
                    + "the height of a roof moves its shadow by as much or more.");

    /** Months as they are printed in little room. */
    public static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    /** Above the table of what one roof would do. */
    public static final String ONE_ROOF =
            "How much of the breach would end if one platform alone always lay in shade, by whatever means. A roof, a sail or "
                    + "a tree that shades it for part of the time ends part of it.";

    /** Which roofs are tried. */
    public static final String ROOFS_TRIED =
            "Tried are level, opaque roofs over one platform with sides along its own, 1.8, 2.4 and 3 m above it, in steps of a "
                    + "quarter of a metre, up to 10 m long and up to 4 m beyond the deck; where none of them will do, smaller "
                    + "ones with one to three screens. Posts, loads, wind and what already stands there are not asked about; "
                    + "neither is whether animals climb on it and out.";

    /** Above the paths of the sun. */
    public static final String SUN_PATHS =
            "A sky chart for the site. Where the filled parts lie, there stands the sun when too few platforms are in shade: "
                    + "a roof, a wall or a tree has to stand between these parts of the sky and the platforms.";

    private ShadeText() {}

    /**
     * What is asked.
     *
     * @param rule the rule
     * @return a clause with all thresholds
     */
    public static String rule(ShadeRule rule) {
        return "whenever the sun stands more than " + degrees(rule.lowestSunDeg()) + " above the level, at least "
                + platforms(rule.atLeast()) + " in shade; a platform is in shade where "
                + Figures.percent(rule.leastShadedShare()) + " or more of it gets at most "
                + Figures.percent(rule.mostBeam()) + " of the direct sunlight";
    }

    /**
     * What came out.
     *
     * @param year a year that was looked at
     * @return a clause that begins with kept or broken
     */
    public static String verdict(ShadeYear year) {
        if (year.sunMinutes() == 0) {
            return "kept, because the sun never stands high enough for the rule to ask for shade";
        }
        String sun = Hours.text(year.sunMinutes()) + " with sun";
        if (year.breachMinutes() == 0) {
            return "kept: at every moment of " + sun + " at least " + platforms(year.fewestShaded()) + " in shade";
        }
        return "broken: for " + Hours.text(year.breachMinutes()) + " of " + sun + " ("
                + Figures.percent((double) year.breachMinutes() / year.sunMinutes())
                + ") too few platforms are in shade, at worst "
                + (year.fewestShaded() == 0 ? "none" : "only " + year.fewestShaded());
    }

    /**
     * When it is broken.
     *
     * @param year a year in which the rule is broken
     * @return a clause with the first breach and the worst day
     */
    public static String when(ShadeYear year) {
        var first = year.firstBreach().orElseThrow();
        var worst = year.worstDay().orElseThrow();
        return "first on " + Hours.moment(first) + "; the worst day is " + Hours.day(worst) + ", with "
                + Hours.text(year.breachMinutes(worst.getDayOfYear() - 1));
    }

    /**
     * What times mean.
     *
     * @param calendar the moments looked at
     * @return a sentence
     */
    public static String standardTime(ShadeCalendar calendar) {
        return "Times are standard time of the site, UTC"
                + calendar.offset().getId().replace("Z", "")
                + ", without summer time; looked at every " + calendar.stepMin() + " min of every day of "
                + calendar.year() + ".";
    }

    /**
     * An angle.
     *
     * @param deg degrees
     * @return for example {@code 5°}
     */
    public static String degrees(double deg) {
        return Figures.decimals(deg, 1) + "°";
    }

    private static String platforms(int count) {
        return count == 1 ? "1 platform is" : count + " platforms are";
    }
}
