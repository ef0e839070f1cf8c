package limbway.reports.chart;

/**
 * How differences are laid out.
 *
 * @param widthPx width of the picture [px]
 * @param leftPx where the axis begins [px]
 * @param labelsAbove whether a label stands above its marks, not to their left
 * @param labelCharacters characters in a line of a label
 * @param keyCharacters characters in a row of the key, with the room between its entries
 * @param headingCharacters characters in a line of the heading
 * @param mostTicks most numbers on the axis
 */
record DifferenceSheet(
        int widthPx,
        double leftPx,
        boolean labelsAbove,
        int labelCharacters,
        int keyCharacters,
        int headingCharacters,
        int mostTicks) {

    /** For a page, a file or paper. */
    static final DifferenceSheet BROAD = new DifferenceSheet(Style.WIDTH_PX, 268, false, 37, 100, 96, 9);

    /** For a telephone held upright: readable without being made smaller. */
    static final DifferenceSheet NARROW = new DifferenceSheet(Style.NARROW_PX, 20, true, 50, 54, 44, 5);
}
