package limbway.reports.measure;

import java.util.Optional;
import java.util.function.IntPredicate;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.KeepersHours;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.PlaceCharacter;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** For how long the animals of one replication could be seen [ms], by number of the animal. */
final class SeenTime {

    /** By viewpoint and animal: visitors are there. */
    private final long[][] visited;

    /** Likewise: and can see it. */
    private final long[][] seen;

    /** Visitors are at one viewpoint at least. */
    private final long[] visitedAnywhere;

    /** And some of them can see it. */
    private final long[] seenByAny;

    /** Visitors are somewhere, and it stays at a retreat. */
    private final long[] atRetreat;

    private SeenTime(int viewpoints, int animals) {
        visited = new long[viewpoints][animals];
        seen = new long[viewpoints][animals];
        visitedAnywhere = new long[animals];
        seenByAny = new long[animals];
        atRetreat = new long[animals];
    }

    static SeenTime of(Habitat habitat, Journal journal) {
        SeenTime time = new SeenTime(
                habitat.layout().keeping().viewpoints().size(),
                habitat.animals().size());
        // holds and their order are the same for all bodies
        Passages any = habitat.passages(habitat.bodies().get(0)).get(0);
        for (Stay stay : journal.stays()) {
            boolean isRetreat = stay.resource() >= 0
                    && habitat.graph().resources().get(stay.resource()).kind() == ResourceKind.RETREAT;
            time.add(habitat, stay.animal(), any.startAt(stay.hold()), stay.startMs(), stay.endMs(), isRetreat);
        }
        for (Trip trip : journal.trips()) {
            int from = any.startAt(trip.way().holds().get(0));
            int to = any.startAt(trip.toHold());
            long halfWayMs = (trip.startMs() + trip.endMs()) / 2;
            time.add(habitat, trip.animal(), from, trip.startMs(), halfWayMs, false);
            time.add(habitat, trip.animal(), to, halfWayMs, trip.endMs(), false);
        }
        return time;
    }

    private void add(Habitat habitat, int animal, int start, long fromMs, long toMs, boolean isRetreat) {
        KeepersHours hours = habitat.keepersHours();
        PlaceCharacter places = habitat.character();
        long now = fromMs;
        while (now < toMs) {
            long end = Math.min(toMs, hours.changesAtMs(now));
            long lasts = end - now;
            boolean isVisited = false;
            boolean isSeen = false;
            for (int viewpoint = 0; viewpoint < visited.length; viewpoint++) {
                if (hours.isPresent(viewpoint, now)) {
                    boolean fromHere = places.isSeen(viewpoint, start);
                    visited[viewpoint][animal] += lasts;
                    seen[viewpoint][animal] += fromHere ? lasts : 0;
                    isVisited = true;
                    isSeen |= fromHere;
                }
            }
            visitedAnywhere[animal] += isVisited ? lasts : 0;
            seenByAny[animal] += isSeen ? lasts : 0;
            atRetreat[animal] += isVisited && isRetreat ? lasts : 0;
            now = end;
        }
    }

    /** Share of the time with visitors at a viewpoint in which they see some animals; empty if nobody is ever there. */
    Optional<Double> seenFrom(int viewpoint, IntPredicate counted) {
        return share(counted, seen[viewpoint], visited[viewpoint]);
    }

    /** Share of the time with visitors anywhere in which some of them see some animals. */
    Optional<Double> seenFromAny(IntPredicate counted) {
        return share(counted, seenByAny, visitedAnywhere);
    }

    /** Share of the time with visitors anywhere that some animals stay at retreats. */
    Optional<Double> atRetreat(IntPredicate counted) {
        return share(counted, atRetreat, visitedAnywhere);
    }

    private static Optional<Double> share(IntPredicate counted, long[] part, long[] whole) {
        long partMs = 0;
        long wholeMs = 0;
        for (int animal = 0; animal < whole.length; animal++) {
            if (counted.test(animal)) {
                partMs += part[animal];
                wholeMs += whole[animal];
            }
        }
        return wholeMs > 0 ? Optional.of((double) partMs / wholeMs) : Optional.empty();
    }
}
