package limbway.sim.day;

/** What happens at one moment, in the order in which it happens; animals follow by their number within a class. */
enum EventClass {
    /** The days that count begin. */
    COUNT,
    /** Keepers shut a place. */
    SHUTTING,
    /** The keepers put food out. */
    DELIVERY,
    /** An animal wakes. */
    WAKE,
    /** An animal ends a trip. */
    ARRIVAL,
    /** An animal has eaten, drunk, rested or waited long enough. */
    BOUT_END,
    /** An animal must set out for its nest. */
    NEST_DEADLINE;

    private static final int MOST_OF_A_KIND = 1_000_000;

    /** Order among events of the same moment, different for each pair of class and number. */
    int ordering(int number) {
        return ordinal() * MOST_OF_A_KIND + number;
    }
}
