package limbway.sim.day;

import limbway.sim.animal.Ape;

/** The clock as an animal's conduct sees it. */
interface Diary {

    /** The time now [ms]. */
    long nowMs();

    /** Sets the animal's next event, in place of the one set before; not before the next millisecond. */
    void expect(Ape ape, long ms, EventClass what);
}
