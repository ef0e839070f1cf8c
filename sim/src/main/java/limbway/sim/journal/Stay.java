package limbway.sim.journal;

/**
 * One stay of one animal at a resource: eating a portion, drinking, resting, sleeping, or waiting for a stall.
 *
 * @param day day of the run, from 1
 * @param animal number of the animal in the study
 * @param startMs start, in milliseconds since midnight before day 1
 * @param endMs end, likewise, not before the start
 * @param resource number of the resource
 * @param hold where the animal is
 * @param motive why it stays
 * @param waiting true while it waits because all stalls are taken
 * @param eatenJ energy eaten during the stay [J]
 * @param drunkMl water drunk during the stay [ml]
 */
public record Stay(
        int day,
        int animal,
        long startMs,
        long endMs,
        int resource,
        int hold,
        Motive motive,
        boolean waiting,
        double eatenJ,
        double drunkMl) {}
