package limbway.reports.words;

import java.util.List;

/** The standing texts of the report page. */
public final class PageText {

    /** Under the heading of the answer. */
    public static final String TWO_NUMBERS =
            "Two numbers that must not be mixed: the share of travel off the ground, above, and the share of waking time "
                    + "spent up high, which is what zoo studies report. An animal that sits on a deck all day and walks to "
                    + "its food has a high second number and a low first.";

    /** How intervals are made. */
    public static final String INTERVALS =
            "Numbers in brackets are 95 % intervals over the repetitions of the run (Student's t). They say how much "
                    + "chance moves the result, not how well the model is right.";

    /** Above the table of trips over the ground. */
    public static final String GROUND =
            "Each row is a trip that was made over the ground, with the energy of both ways by part: climbing "
                    + "down, walking level, climbing up, clambering (along ropes and branches, on several holds at once) and "
                    + "bridging of gaps (reaching over and drawing the body after). Energies are those of one trip. What trips are for: comfort is a place that is liked for what it is, or a "
                    + "change; company is keeping close to the animal that is followed; night is going to bed.";

    /** Above the chart of what animals do. */
    public static final String ACTIVITY =
            "Feeding is eating and drinking; moving is every trip, also the one to bed; waiting is standing by for a full place; "
                    + "resting is because of tiredness or heat; comfort and company is being somewhere because it is liked, "
                    + "for a change, or to keep close to the animal that is followed. Waking time is all time but in bed.";

    /** Above the chart of hours. */
    public static final String HOURS =
            "A share means little in an hour in which nobody travels; the bars below show how much was travelled.";

    /** Above the chart of heights. */
    public static final String HEIGHTS =
            "Waking time is all time but sleep in the night nest. Feeding, drinking and resting count at the height of the "
                    + "place, travel at the height of the path.";

    /** Above the table of energy. */
    public static final String ENERGY =
            "Means a day. Resting energy is spent by the second whatever an animal does; moving comes on top, and while it is "
                    + "awake an even share for all else, such as handling, play and keeping warm (other).";

    /** Above the table of waiting. */
    public static final String COMPANY =
            "An animal that finds all stalls of a place taken challenges one of those that hold them. Rank and need decide, with "
                    + "chance; how strictly is assumed. Who does not win may wait for a stall.";
    /** Above the table of what visitors see. */
    public static final String VISITORS =
            "Shares of the time in which visitors are at a viewpoint, asleep or awake. An animal counts as seen where the "
                    + "straight line from the viewpoint to half a metre above its hold lets at least half of the light "
                    + "through, with leaves as at midsummer; half of each trip counts at either end. Whether anybody would "
                    + "find the animal among the leaves is not told.";

    /** Above the comparison of layouts. */
    public static final String LAYOUTS =
            "All layouts were run with the same seed, so the animals wake, hunger and choose under the same chance; "
                    + "differences are taken repetition by repetition, which leaves out the chance that both share. They are in "
                    + "percentage points: from 6 % to 61 % is +55. Where the interval of a difference holds 0, chance "
                    + "alone may have made it.";

    /** Above the table with and without worth. */
    public static final String WORTH =
            "The worth of a place is what draws animals to it beyond needs and energy: bedding, cover, height, company, the "
                    + "edge, a view. How much each counts is an assumption; docs/validation.md says which patterns seen in real "
                    + "apes these were fitted to. So every layout was lived in once more under the same chance with all of "
                    + "them at nothing. What stands on both sides rests on needs and energy; what differs rests on "
                    + "assumptions; the command screen tells which of them move the answer of this scenario. All charts and other "
                    + "tables of this page are with the worth of places.";

    /** Where worth was switched off. */
    public static final String WORTH_OFF =
            "This run was made with needs and energy alone: no place is worth anything for its bedding, cover, height, company, "
                    + "edge or view.";

    /** Above the findings. */
    public static final String FINDINGS =
            "Found from the drawing alone, before any animal moved: first what must be mended, then what works but not as "
                    + "a climbing structure is meant to, then what is good to know.";

    /** Above the parameters. */
    public static final String PARAMETERS =
            "Each number that took part, with the range worth trying. Published: read in the named source. Derived: computed "
                    + "from published values. Unverified: from memory or a secondary page. Assumption: chosen here; vary it "
                    + "before you lean on it.";

    /** What the model is told and does not find out. */
    public static final List<String> IMPOSED = List.of(
            "The geometry, where things are, when and how much is fed.",
            "What a body weighs, reaches and grips, and what a metre costs in each way of moving.",
            "That animals go to food, water, shade and nests because they are hungry, thirsty, tired or hot or it gets dark, "
                    + "and that they weigh gain against effort; they get hot only where the scenario has weather.",
            "What places are worth beyond that, for bedding, cover, height, company and more: how much is assumed.");

    /** What comes out of it. */
    public static final List<String> EMERGES = List.of(
            "Which way each trip takes, and so the share off the ground.",
            "Who eats where and when, who waits for whom, and where each sleeps.",
            "Which missing rope, thick pole or feeder on the floor the ground use comes from.");

    /** Where a reader should not lean on it. */
    public static final List<String> DOUBTFUL = List.of(
            "Costs: no orangutan was measured. Read ground costs as 30 % uncertain either way; the true cost of climbing may "
                    + "lie 40 % below to 15 % above.",
            "Reach and grip are worked out from arm spans and hand lengths; your own animals may do more or less.",
            "What apes bear of heat is not known: where the scenario has weather, how soon they look for shade is assumed "
                    + "from an index of their surface in the sun, under the sky that the weather gives.",
            "Play, injuries, rain and what visitors do to animals beyond being seen are not in it. Predictions have not been compared with what "
                    + "keepers saw.",
            "Compare layouts rather than trusting one number: errors that are the same on both sides cancel.");

    private PageText() {}
}
