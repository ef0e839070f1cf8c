package limbway.reports.words;

import java.util.List;
import java.util.Optional;

import limbway.model.heat.ContactLimits;
import limbway.model.heat.MemberDay;
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
            "Of thick timber, rope and concrete the side towards the sun gets hotter than the mean round it; both are told.",
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
     * @return a clause
     */
    public static String burns(Optional<ContactLimits.Hold> hold) {
        return hold.map(time -> "burns human skin within " + time.word()).orElse("no burn by these thresholds");
    }

    /**
     * A member and its hottest hour.
     *
     * @param member a support through a day
     * @return for example {@code weathered galvanised steel, 10 cm: 71 °C at 12:30}
     */
    public static String peak(MemberDay member) {
        int hour = member.hottestHour();
        String text = member.surface().word() + ", " + Figures.thickness(member.diameterM()) + ": "
                + degreesC(member.peakC()) + " at " + hour + ":30";
        return member.isSteady()
                ? text
                : text + ", its side to the sun up to "
                        + degreesC(member.sunnySideC().get(hour));
    }
}
