package limbway.reports.measure;

import limbway.sim.journal.Stay;

/** What an animal does at a moment, as shares of the day are told; every moment is one of these. */
public enum Activity {
    /** Eats or drinks: a stay for hunger or thirst that is not a wait. */
    FEEDING("feeding"),
    /** Is on a trip, also on the one to bed. */
    MOVING("moving"),
    /** Stands in a queue for a stall, whatever for. */
    WAITING("waiting"),
    /** Rests by day because it is tired or hot. */
    RESTING("resting"),
    /** Is at a place because it likes it there, for a change, or to keep close to the animal that it follows. */
    COMFORT("comfort and company"),
    /** Has gone to bed; no part of waking time, also before it sleeps. */
    NIGHT("in bed");

    private final String word;

    Activity(String word) {
        this.word = word;
    }

    /**
     * The words used in charts and tables.
     *
     * @return lower-case English words
     */
    public String word() {
        return word;
    }

    static Activity of(Stay stay) {
        return switch (stay.motive()) {
            case NIGHT -> NIGHT;
            case HUNGER, THIRST -> stay.waiting() ? WAITING : FEEDING;
            case FATIGUE, HEAT -> stay.waiting() ? WAITING : RESTING;
            case COMFORT, COMPANY -> stay.waiting() ? WAITING : COMFORT;
        };
    }
}
