package limbway.reports.scene;

/**
 * A shape and what it is painted with.
 *
 * @param mesh the shape
 * @param finish the paint
 */
record Part(Mesh mesh, Finish finish) {}
