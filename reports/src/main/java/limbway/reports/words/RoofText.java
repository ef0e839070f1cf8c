package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Cover;
import limbway.model.geometry.Point;
import limbway.model.shade.Roof;
import limbway.model.shade.RoofAnswer;

/** Says which roof would end a breach of the shade rule. */
public final class RoofText {

    private static final String[] WINDS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private RoofText() {}

    /**
     * What came of the search.
     *
     * @param answer the answer for a year in breach
     * @return a sentence
     */
    public static String of(RoofAnswer answer) {
        if (answer instanceof RoofAnswer.Found found) {
            return "The smallest roof of those tried that ends every breach is " + roof(found.roof()) + ".";
        }
        if (answer instanceof RoofAnswer.NoneFound none) {
            int left = none.after().breachMinutes();
            return "No roof over one platform, of those tried, ends every breach. The best is " + roof(none.best())
                    + ": it leaves " + Hours.text(left) + " of " + Hours.text(none.minutesBefore())
                    + ", with the sun " + ShadeText.degrees(none.lowestSunDeg()) + " to "
                    + ShadeText.degrees(none.highestSunDeg()) + " high"
                    + (none.minutesOfTwo() > 0
                            ? ". For " + Hours.text(none.minutesOfTwo())
                                    + " of it more than one platform is missing, so that a second one needs shade too."
                            : ".");
        }
        if (answer instanceof RoofAnswer.TooFewPlatforms few) {
            return "The rule asks for " + few.wanted() + " platforms in shade and "
                    + (few.counted() == 0 ? "none" : "only " + few.counted())
                    + " counts: no roof can keep it. Add platforms, or ask for fewer.";
        }
        if (answer instanceof RoofAnswer.Interrupted) {
            return "Roofs were not tried to the end.";
        }
        return "Nothing has to be mended.";
    }

    /** A roof in words. */
    private static String roof(Roof roof) {
        StringBuilder text = new StringBuilder("a level roof of " + Figures.decimals(roof.sideAM(), 2) + " by "
                + Figures.metres(roof.sideBM()) + ", " + Figures.metres(roof.riseM()) + " above " + roof.platform());
        List<String> screens = new ArrayList<>();
        for (double deg : roof.screensFaceDeg()) {
            screens.add(WINDS[(int) Math.round(deg / 45) % WINDS.length]);
        }
        if (!screens.isEmpty()) {
            text.append(", with ")
                    .append(screens.size() == 1 ? "a screen" : "screens")
                    .append(" from its edge down to the deck on the ")
                    .append(String.join(" and the ", screens));
        }
        return text.append(" (")
                .append(Figures.decimals(roof.areaM2(), 1))
                .append(" m² in all)")
                .toString();
    }

    /**
     * The roof and its screens as lines of a scenario, to be put under {@code covers}.
     *
     * @param roof what to try
     * @return one line for each
     */
    public static List<String> asScenario(Roof roof) {
        List<String> lines = new ArrayList<>();
        for (Cover cover : roof.covers()) {
            List<String> corners = new ArrayList<>();
            for (Point corner : cover.facet().corners()) {
                corners.add("[" + Figures.decimals(corner.xM(), 2) + ", " + Figures.decimals(corner.yM(), 2) + ", "
                        + Figures.decimals(corner.zM(), 2) + "]");
            }
            lines.add("- {roof: " + cover.id().replace(' ', '-') + ", corners: [" + String.join(", ", corners) + "]}");
        }
        return lines;
    }
}
