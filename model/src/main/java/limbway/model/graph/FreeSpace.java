package limbway.model.graph;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;

/** Where something could be built: nothing stands in its way. */
public final class FreeSpace {

    /** A line may dip so far below the ground through rounding [m]. */
    private static final double SLACK_M = 0.01;

    private final Enclosure enclosure;
    private final Obstructions obstructions;

    /**
     * The free space of an enclosure.
     *
     * @param enclosure what stands there
     */
    public FreeSpace(Enclosure enclosure) {
        this.enclosure = enclosure;
        this.obstructions = Obstructions.of(enclosure);
    }

    /**
     * Whether a line passes no deck, panel, barrier or door and no space kept free by live wire, and stays above the ground.
     *
     * @param line what would be built
     * @return true if nothing is in its way
     */
    public boolean holds(Polyline line) {
        for (Segment piece : line.pieces()) {
            double aboveM = piece.b().zM()
                    - enclosure
                            .ground()
                            .terrain()
                            .heightM(piece.b().xM(), piece.b().yM());
            boolean inside = enclosure
                    .ground()
                    .outline()
                    .covers(piece.b().xM(), piece.b().yM());
            if (!inside || aboveM < -SLACK_M || obstructions.passage(piece.a(), piece.b()) != Obstructions.FREE) {
                return false;
            }
        }
        return true;
    }
}
