package limbway.reports.words;

import java.util.List;

/** What must be said wherever a result could be taken for a permission. */
public final class Cautions {

    /** The cautions in one paragraph, for the top of a page and for help texts. */
    public static final String IN_SHORT =
            "Limbway gives warnings, never a pass. It knows little of strength, nothing of falls, and not what an ape can "
                    + "break, climb or get out of. Structural strength and containment are decided by licensed people under "
                    + "the codes of your place.";

    private Cautions() {}

    /**
     * The cautions one by one.
     *
     * @return sentences
     */
    public static List<String> inFull() {
        return List.of(
                "Falls: a high, well used structure is also a place to fall from. The model never lets an animal slip; "
                        + "landing surfaces and the ages of the animals are yours to judge.",
                "Strength: an adult male pulls with several times his weight and tests every joint for years. Warnings "
                        + "of members that may break are textbook formulas for one still animal; no joint, fatigue or "
                        + "foundation is computed here.",
                "Escape: a rope or branch that shortens a trip may also shorten the way to a barrier. The audit "
                        + "lists where animals come near to what is drawn as a barrier or as the edge, for a licensed "
                        + "reviewer; what it does not list is no pass.",
                "Burns and shocks: sun heats steel, and a wire within reach of a hold hurts. How hot surfaces get is told by "
                        + "limbway shade alone, where there is weather, and roughly; live wire is only a space that animals "
                        + "keep out of.",
                "People: structural strength and containment are decided by licensed people under local codes. A finding "
                        + "that is missing here is no proof that nothing is wrong.");
    }
}
