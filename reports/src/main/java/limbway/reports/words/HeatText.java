package limbway.reports.words;

import java.util.List;
import java.util.Optional;

import limbway.model.heat.ContactLimits;
import limbway.model.weather.Conditions;

/** Says how hot members get, and what that would do to a hand. */
public final class HeatText {

    /** What the thresholds are and are not. */
    public static final String THRESHOLDS =
            "Burns are told for the skin of human adults, by thresholds of ISO 13732-1 from memory: buy the standard before you "
                    + "quote it. Whether the palms and soles of apes bear more or less, nobody has published; infants bear less.";

    /** Where not to trust temperatures of members. */
    public static final List<String> DOUBTFUL = List.of(
            "Temperatures are those of long, round members in the balance of one hour; how bright and how dull a surface is "
                    + "was taken from handbooks or memory. A surface of no stated state is taken to be the hottest of its "
                    + "kind: zinc weathered, paint black. Ten degrees either way are well possible.",
            "Only supports are reckoned: decks, hammocks and mesh get hot as well, boards in still air about as hot as thick "
                    + "members of the same surface. A touch of metal is judged by the mean round the tube; the side to the sun "
                    + "of a wide thin tube is some degrees hotter.",
            "Wood, rope and concrete are hotter on the side to the sun than round about. What is told of that side is an upper "
                    + "bound, as if no heat flowed round, and a touch is judged by it.",
            "A support marked as thick takes hours to follow the sun: what is told of it is what a long steady sun would lead "
                    + "to.",
            "The wind beside a wall or under a roof is not the wind of the weather. In still air thin members are hardly "
                    + "cooler than thick ones.");

    private HeatText() {}

    /**
     * The weather of an hour.
     *
     * @param open weather in the open
     * @return a clause with air, wind and sun
     */
    public static String conditions(Conditions open) {
        return "air " + degreesC(open.airC()) + ", wind " + Figures.decimals(open.windMPerS(), 1) + " m/s, sun "
                + Figures.decimals(open.irradiance().beamWPerM2(), 0) + " W/m² direct and "
                + Figures.decimals(open.irradiance().diffuseWPerM2(), 0) + " W/m² from the sky";
    }

    /**
     * A temperature.
     *
     * @param celsius degrees Celsius
     * @return whole degrees
     */
    public static String degreesC(double celsius) {
        return Figures.decimals(celsius, 0) + " °C";
    }

    /**
     * What a touch does.
     *
     * @param hold the shortest touch that burns; empty if none does
     * @param isEven whether the surface is as hot all round; else only its side to the sun may burn
     * @return a clause
     */
    public static String burns(Optional<ContactLimits.Hold> hold, boolean isEven) {
        return hold.map(time -> (isEven ? "burns" : "may burn") + " human skin in " + time.word())
                .orElse("no burn by these thresholds");
    }

    /**
     * How hot a surface is.
     *
     * @param meanC mean round it [°C]
     * @param sunnySideC upper bound of its side to the sun [°C]
     * @param isEven whether the surface is as hot all round
     * @return for example {@code 71 °C}, or {@code 44 °C, up to 63 °C on the side to the sun}
     */
    public static String surface(double meanC, double sunnySideC, boolean isEven) {
        return degreesC(meanC) + (isEven ? "" : ", up to " + degreesC(sunnySideC) + " on the side to the sun");
    }

    /**
     * Whether a member follows the sun.
     *
     * @param isSteady whether it does within a quarter of an hour
     * @return nothing if it does; else a clause in brackets, with a space before it
     */
    public static String lag(boolean isSteady) {
        return isSteady ? "" : " (thick: hours behind the sun)";
    }
}
