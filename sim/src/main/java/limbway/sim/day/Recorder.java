package limbway.sim.day;

import java.util.ArrayList;
import java.util.List;

import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.sim.animal.Ape;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Stock;
import limbway.sim.journal.Trip;

/** Takes down what happens from the first day that counts, in the time of that day. */
final class Recorder {

    private final List<Trip> trips = new ArrayList<>();
    private final List<Stay> stays = new ArrayList<>();
    private final long fromMs;
    private final int daysBefore;
    private final List<Displacement> displacements = new ArrayList<>();

    /** Takes down nothing that ended before a midnight. */
    Recorder(long fromMs) {
        this.fromMs = fromMs;
        daysBefore = (int) (fromMs / Almanac.DAY_MS);
    }

    /** A trip that begins now. */
    void trip(Ape ape, long nowMs, int place, Motive motive, Search.Reached ways, Way way) {
        if (nowMs >= fromMs) {
            trips.add(new Trip(
                    Almanac.day(nowMs) - daysBefore,
                    ape.number(),
                    nowMs - fromMs,
                    ape.place(),
                    place,
                    motive,
                    ways,
                    way));
        }
    }

    /** A stay that ended; what it ate and drank before the first day that counts is left out with that time. */
    void add(Stay stay) {
        if (fromMs == 0) {
            stays.add(stay);
        } else if (stay.endMs() > fromMs) {
            long start = Math.max(fromMs, stay.startMs());
            stays.add(new Stay(
                    Almanac.day(start) - daysBefore,
                    stay.animal(),
                    start - fromMs,
                    stay.endMs() - fromMs,
                    stay.resource(),
                    stay.hold(),
                    stay.motive(),
                    stay.waiting(),
                    stay.eatenJ(),
                    stay.drunkMl()));
        }
    }

    /** Displacements come in order of time; those of one moment in the order in which they happen. */
    void add(Displacement displacement) {
        if (displacement.timeMs() >= fromMs) {
            displacements.add(new Displacement(
                    displacement.day() - daysBefore,
                    displacement.timeMs() - fromMs,
                    displacement.resource(),
                    displacement.winner(),
                    displacement.loser(),
                    displacement.motive()));
        }
    }

    Journal journal(int replication, List<Reserve> reserves, List<Stock> stocks) {
        trips.sort((a, b) -> inTime(a.startMs(), a.animal(), b.startMs(), b.animal()));
        stays.sort((a, b) -> inTime(a.startMs(), a.animal(), b.startMs(), b.animal()));
        return new Journal(replication, trips, stays, reserves, stocks, displacements);
    }

    private static int inTime(long oneMs, int one, long otherMs, int other) {
        return oneMs == otherMs ? Integer.compare(one, other) : Long.compare(oneMs, otherMs);
    }
}
