package limbway.sim.habitat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Resource;
import limbway.model.study.Attendance;
import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.model.study.Keeping;
import limbway.model.study.Viewpoint;

/**
 * What people do in an enclosure, looked up by the clock; every day is like the others, also those before day 1.
 *
 * <p>Times are milliseconds since midnight before day 1. The day is cut into stretches in which nothing changes.
 */
public final class KeepersHours {

    private static final long SECOND_MS = 1000;
    private static final int DAY_S = 86_400;
    private static final int MINUTE_S = 60;
    private static final long DAY_MS = DAY_S * SECOND_MS;

    private final int resources;
    private final int viewpoints;
    private final int posts;
    private final int[] startS;
    private final int[] stretchOfMinute;
    private final double[] bedding;
    private final boolean[] isShut;
    private final long[] opensMs;
    private final long[] shutsMs;
    private final boolean[] hasVisitors;
    private final boolean[] hasStaff;

    /**
     * Reads a plan.
     *
     * @param keeping what people do
     * @param resources the places, in the order in which they are numbered
     * @throws IllegalArgumentException if bedding or a closure names a place that is not among them
     */
    public KeepersHours(Keeping keeping, List<Resource> resources) {
        this.resources = resources.size();
        viewpoints = keeping.viewpoints().size();
        posts = keeping.staff().size();
        startS = changes(keeping);
        stretchOfMinute = new int[DAY_S / MINUTE_S];
        for (int minute = 0; minute < stretchOfMinute.length; minute++) {
            int found = Arrays.binarySearch(startS, minute * MINUTE_S);
            stretchOfMinute[minute] = found >= 0 ? found : -found - 2;
        }
        bedding = new double[startS.length * this.resources];
        isShut = new boolean[bedding.length];
        opensMs = new long[bedding.length];
        shutsMs = new long[bedding.length];
        hasVisitors = new boolean[startS.length * viewpoints];
        hasStaff = new boolean[startS.length * posts];
        List<String> ids = resources.stream().map(Resource::id).toList();
        keeping.bedding().forEach(round -> require(ids, round.resource()));
        keeping.closures().forEach(closure -> require(ids, closure.resource()));
        for (int stretch = 0; stretch < startS.length; stretch++) {
            for (int r = 0; r < this.resources; r++) {
                fill(keeping, resources.get(r), stretch, stretch * this.resources + r);
            }
            for (int v = 0; v < viewpoints; v++) {
                hasVisitors[stretch * viewpoints + v] =
                        covers(keeping.viewpoints().get(v).hours(), startS[stretch]);
            }
            for (int p = 0; p < posts; p++) {
                hasStaff[stretch * posts + p] = covers(keeping.staff().get(p).hours(), startS[stretch]);
            }
        }
        for (int stretch = 0; stretch < startS.length; stretch++) {
            for (int r = 0; r < this.resources; r++) {
                opensMs[stretch * this.resources + r] = next(stretch, r, false);
                shutsMs[stretch * this.resources + r] = next(stretch, r, true);
            }
        }
    }

    private static void require(List<String> ids, String id) {
        if (!ids.contains(id)) {
            throw new IllegalArgumentException("keeping: resource = \"" + id + "\", allowed " + ids);
        }
    }

    private static int[] changes(Keeping keeping) {
        TreeSet<Integer> changes = new TreeSet<>(List.of(0));
        keeping.bedding().forEach(round -> changes.add(round.at().toSecondOfDay()));
        keeping.closures().stream().map(Closure::hours).forEach(hours -> add(changes, hours));
        keeping.staff().stream().map(Attendance::hours).forEach(hours -> add(changes, hours));
        keeping.viewpoints().stream().map(Viewpoint::hours).forEach(hours -> add(changes, hours));
        return changes.stream().mapToInt(Integer::intValue).toArray();
    }

    private static void add(Set<Integer> changes, OpenHours hours) {
        changes.add(hours.from().toSecondOfDay());
        changes.add(hours.to().toSecondOfDay());
    }

    private static boolean covers(OpenHours hours, int second) {
        int from = hours.from().toSecondOfDay();
        int lastsS = Math.floorMod(hours.to().toSecondOfDay() - from - 1, DAY_S) + 1;
        return Math.floorMod(second - from, DAY_S) < lastsS;
    }

    private void fill(Keeping keeping, Resource resource, int stretch, int at) {
        int sinceCleaningS = DAY_S;
        for (Closure closure : keeping.closures()) {
            if (closure.resource().equals(resource.id())) {
                isShut[at] |= covers(closure.hours(), startS[stretch]);
                if (closure.cleaned()) {
                    int sinceS = Math.floorMod(
                            startS[stretch] - closure.hours().from().toSecondOfDay(), DAY_S);
                    sinceCleaningS = Math.min(sinceCleaningS, sinceS);
                }
            }
        }
        double lies = resource.bedding();
        for (BeddingRound round : keeping.bedding()) {
            int sinceS = Math.floorMod(startS[stretch] - round.at().toSecondOfDay(), DAY_S);
            if (round.resource().equals(resource.id()) && sinceS <= sinceCleaningS) {
                lies += round.amount();
            }
        }
        bedding[at] = Math.min(1, lies);
    }

    /** When a place next becomes open or shut after a stretch has begun, from the midnight before the stretch [ms]. */
    private long next(int stretch, int resource, boolean shut) {
        for (int later = 1; later <= startS.length; later++) {
            int then = (stretch + later) % startS.length;
            int before = (stretch + later - 1) % startS.length;
            if (isShut[then * resources + resource] == shut && isShut[before * resources + resource] != shut) {
                return startS[then] * SECOND_MS + (then > stretch ? 0 : DAY_MS);
            }
        }
        return Long.MAX_VALUE;
    }

    private static long sinceDayBegan(long clockMs) {
        return Math.floorMod(clockMs, DAY_MS);
    }

    private int at(int resource, long clockMs) {
        return stretch(clockMs) * resources + resource;
    }

    /**
     * The stretch of the day at a time, within which nothing changes.
     *
     * @param clockMs time [ms]
     * @return number of a stretch, from 0
     */
    public int stretch(long clockMs) {
        if (startS.length == 1) {
            return 0;
        }
        int second = (int) (sinceDayBegan(clockMs) / SECOND_MS);
        int stretch = stretchOfMinute[second / MINUTE_S];
        while (stretch + 1 < startS.length && startS[stretch + 1] <= second) {
            stretch++;
        }
        return stretch;
    }

    /**
     * Number of stretches of the day.
     *
     * @return 1 or more
     */
    public int stretches() {
        return startS.length;
    }

    /**
     * When a stretch begins.
     *
     * @param stretch number of a stretch
     * @return time since midnight [ms]
     */
    public long startMs(int stretch) {
        return startS[stretch] * SECOND_MS;
    }

    /** Whether staff are at a post in a stretch. */
    boolean hasStaff(int post, int stretch) {
        return hasStaff[stretch * posts + post];
    }

    /** Whether visitors are at a viewpoint in a stretch. */
    boolean hasVisitors(int viewpoint, int stretch) {
        return hasVisitors[stretch * viewpoints + viewpoint];
    }

    /**
     * How much bedding lies at a place: its own, and what was put out since it was last cleaned. Cleaning takes what lies
     * there when it begins; what is put out while it goes on stays. Where nothing is ever cleaned, one day's amounts lie.
     *
     * @param resource number of a resource
     * @param clockMs time [ms]
     * @return 0 (none) to 1 (as much as a deep nest takes, or more)
     */
    public double bedding(int resource, long clockMs) {
        return bedding[at(resource, clockMs)];
    }

    /**
     * Whether animals cannot use a place.
     *
     * @param resource number of a resource
     * @param clockMs time [ms]
     * @return true while it is shut
     */
    public boolean isShut(int resource, long clockMs) {
        return isShut[at(resource, clockMs)];
    }

    /**
     * When a place is open again.
     *
     * @param resource number of a resource
     * @param clockMs time [ms]
     * @return the same time if it is open, else the next at which it is; {@link Long#MAX_VALUE} if it never is
     */
    public long opensAtMs(int resource, long clockMs) {
        int at = at(resource, clockMs);
        return isShut[at] ? later(opensMs[at], clockMs) : clockMs;
    }

    /**
     * When a place is next shut.
     *
     * @param resource number of a resource
     * @param clockMs time [ms]
     * @return the next time after this at which it becomes shut; {@link Long#MAX_VALUE} if it never does
     */
    public long shutsAtMs(int resource, long clockMs) {
        return later(shutsMs[at(resource, clockMs)], clockMs);
    }

    private static long later(long sinceMidnightMs, long clockMs) {
        return sinceMidnightMs == Long.MAX_VALUE ? Long.MAX_VALUE : clockMs - sinceDayBegan(clockMs) + sinceMidnightMs;
    }

    /**
     * When anything next changes.
     *
     * @param clockMs time [ms]
     * @return a later time, at most a day later [ms]; between the two nothing of what is told here changes
     */
    public long changesAtMs(long clockMs) {
        int stretch = stretch(clockMs);
        long endMs = stretch + 1 < startS.length ? startS[stretch + 1] * SECOND_MS : DAY_MS;
        return later(endMs, clockMs);
    }

    /**
     * Whether visitors look in.
     *
     * @param viewpoint number of a viewpoint
     * @param clockMs time [ms]
     * @return true in the hours in which visitors are there
     */
    public boolean isPresent(int viewpoint, long clockMs) {
        return hasVisitors(viewpoint, stretch(clockMs));
    }
}
