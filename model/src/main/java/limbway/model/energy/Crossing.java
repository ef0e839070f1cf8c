package limbway.model.energy;

/** What came of asking whether a body can cross a gap by swaying, leaping or dropping. */
public sealed interface Crossing {

    /**
     * It can.
     *
     * @param energyJ net energy [J], 0 or more
     * @param seconds time from taking hold to having crossed [s], 0 or more
     */
    record Possible(double energyJ, double seconds) implements Crossing {}

    /**
     * It cannot.
     *
     * @param why the value found and the value allowed, in words
     */
    record Refused(String why) implements Crossing {}
}
