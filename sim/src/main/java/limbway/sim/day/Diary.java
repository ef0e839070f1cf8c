package limbway.sim.day;

import limbway.sim.animal.Ape;

/** The clock, and what each animal is doing, as an animal's conduct sees them. */
interface Diary {

    /** The time now [ms]. */
    long nowMs();

    /** What an animal is doing. */
    Doing doing(Ape ape);

    /** Sets the animal's next event, in place of the one set before; not before the next millisecond. */
    void expect(Ape ape, long ms, EventClass what);
}
