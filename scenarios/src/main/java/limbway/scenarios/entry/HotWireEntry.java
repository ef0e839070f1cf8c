package limbway.scenarios.entry;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.scenarios.problem.Place;

/** A volume that live wire keeps free, as declared. */
public sealed interface HotWireEntry extends Entry {

    /**
     * How far animals keep away.
     *
     * @return distance [m]
     */
    double clearanceM();

    /**
     * A live strand.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param linePlace where its course is declared
     * @param line its course, two points or more
     * @param clearanceM how far animals keep away [m]
     */
    record Strand(String id, String what, Place place, Place linePlace, List<Point> line, double clearanceM)
            implements HotWireEntry {

        /** Keeps a copy of the list. */
        public Strand {
            line = List.copyOf(line);
        }
    }

    /**
     * Planting behind live wire.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param outlinePlace where its outline is declared
     * @param outline what it covers
     * @param bottomM its lower end [m]; empty for the lowest ground below it
     * @param topM its upper end [m]
     * @param clearanceM how far animals keep away [m]
     */
    record Planting(
            String id,
            String what,
            Place place,
            Place outlinePlace,
            Outline outline,
            OptionalDouble bottomM,
            double topM,
            double clearanceM)
            implements HotWireEntry {}
}
