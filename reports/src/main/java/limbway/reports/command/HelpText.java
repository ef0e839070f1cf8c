package limbway.reports.command;

/** The cautions at the end of every help text; the same words as in the report, cut into lines. */
final class HelpText {

    static final String CAUTIONS_1 =
            "Limbway gives warnings, never a pass. It knows nothing of strength, of falls, or of what an ape can";
    static final String CAUTIONS_2 =
            "break, climb or get out of. Structural strength and containment are decided by licensed people under";
    static final String CAUTIONS_3 = "the codes of your place.";

    private HelpText() {}
}
