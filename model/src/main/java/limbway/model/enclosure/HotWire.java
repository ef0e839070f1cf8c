package limbway.model.enclosure;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Polyline;

/** A volume that electric wire keeps free of animals: nothing of a move may come within its clearance. */
public sealed interface HotWire {

    /**
     * Name, unique within the enclosure.
     *
     * @return the name
     */
    String id();

    /**
     * How far animals keep away.
     *
     * @return distance [m], above 0
     */
    double clearanceM();

    /**
     * A live strand.
     *
     * @param id name, unique within the enclosure
     * @param line its course
     * @param clearanceM how far animals keep away from it [m], above 0
     */
    record Strand(String id, Polyline line, double clearanceM) implements HotWire {

        /**
         * Checks the clearance.
         *
         * @throws IllegalArgumentException naming the wire
         */
        public Strand {
            requireAboveZero(id, clearanceM);
        }
    }

    /**
     * Planting behind live wire: what stands in it is out of reach.
     *
     * @param id name, unique within the enclosure
     * @param footprint what the planting covers, in plan
     * @param baseZM its lower end [m]
     * @param topZM its top [m], above {@code baseZM}
     * @param clearanceM how far animals keep away from it [m], above 0
     */
    record Planting(String id, Outline footprint, double baseZM, double topZM, double clearanceM) implements HotWire {

        /**
         * Checks clearance and heights.
         *
         * @throws IllegalArgumentException naming the planting
         */
        public Planting {
            requireAboveZero(id, clearanceM);
            if (!(topZM > baseZM)) {
                throw new IllegalArgumentException("planting \"" + id + "\": baseZM = " + baseZM + ", topZM = " + topZM
                        + ", allowed topZM above baseZM");
            }
        }
    }

    private static void requireAboveZero(String id, double clearanceM) {
        if (!(clearanceM > 0)) {
            throw new IllegalArgumentException(
                    "hot wire \"" + id + "\": clearanceM = " + clearanceM + ", allowed above 0");
        }
    }
}
