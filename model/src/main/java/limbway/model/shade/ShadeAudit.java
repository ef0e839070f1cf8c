package limbway.model.shade;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;

/** Looks at every moment of a year whether each rest platform lies in shade. */
public final class ShadeAudit {

    /** Sample points along each side of a platform. */
    public static final int PER_SIDE = 5;

    private final Enclosure enclosure;
    private final ShadeScene scene;
    private final ShadeRule rule;
    private final ShadeCalendar calendar;
    private final List<Platform> platforms;
    private final List<SampleGrid> grids;

    private ShadeAudit(
            Enclosure enclosure,
            ShadeSettings settings,
            ShadeRule rule,
            ShadeCalendar calendar,
            List<Platform> platforms) {
        this.enclosure = enclosure;
        this.scene = ShadeScene.of(enclosure, settings);
        this.rule = rule;
        this.calendar = calendar;
        this.platforms = platforms;
        this.grids = platforms.stream()
                .map(platform -> new SampleGrid(platform, PER_SIDE))
                .toList();
    }

    /**
     * Audits a year.
     *
     * @param enclosure what stands there
     * @param settings what shade depends on besides shape
     * @param rule what counts as shaded, and how many must be
     * @param calendar the moments
     * @param names rest platforms to look at
     * @param threads threads to use, 1 or more; the answer does not depend on them
     * @param progress told of each block of days
     * @return the year; empty if it was stopped
     * @throws IllegalArgumentException naming a platform that is not there, or a number of threads below 1
     */
    public static Optional<ShadeYear> of(
            Enclosure enclosure,
            ShadeSettings settings,
            ShadeRule rule,
            ShadeCalendar calendar,
            List<String> names,
            int threads,
            ShadeProgress progress) {
        if (threads < 1) {
            throw new IllegalArgumentException("shade audit: threads = " + threads + ", allowed 1 or more");
        }
        List<Platform> platforms = names.stream()
                .map(name -> enclosure.platforms().stream()
                        .filter(platform -> platform.id().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("shade audit: no platform \"" + name + "\"")))
                .toList();
        return new ShadeAudit(enclosure, settings, rule, calendar, platforms).run(threads, progress);
    }

    /**
     * Looks at a single day.
     *
     * @param enclosure what stands there; all its platforms are looked at
     * @param rule what counts as shaded, and how many must be
     * @param calendar the moments
     * @param day 0 for the first of January
     * @return minutes at which too few platforms lie in shade, the same as of that day in the whole year
     */
    public static int breachMinutes(Enclosure enclosure, ShadeRule rule, ShadeCalendar calendar, int day) {
        List<Platform> platforms = enclosure.platforms();
        BitSet[] found = new ShadeAudit(enclosure, ShadeSettings.standard(), rule, calendar, platforms).look(day);
        int breaches = 0;
        for (int slot = found[0].nextSetBit(0); slot >= 0; slot = found[0].nextSetBit(slot + 1)) {
            int shaded = 0;
            for (int p = 1; p < found.length; p++) {
                shaded += found[p].get(slot) ? 1 : 0;
            }
            breaches += shaded < rule.atLeast() ? 1 : 0;
        }
        return breaches * calendar.stepMin();
    }

    private Optional<ShadeYear> run(int threads, ShadeProgress progress) {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<Future<BitSet[]>> days = new ArrayList<>();
            for (int day = 0; day < calendar.days(); day++) {
                int number = day;
                Callable<BitSet[]> task = () -> look(number);
                days.add(workers.submit(task));
            }
            return collect(days, progress);
        } finally {
            workers.shutdownNow();
        }
    }

    private Optional<ShadeYear> collect(List<Future<BitSet[]>> days, ShadeProgress progress) {
        BitSet up = new BitSet();
        List<BitSet> shaded = new ArrayList<>();
        platforms.forEach(platform -> shaded.add(new BitSet()));
        for (int day = 0; day < days.size(); day++) {
            BitSet[] found;
            try {
                found = days.get(day).get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return Optional.empty();
            } catch (ExecutionException e) {
                throw new IllegalStateException("shade audit failed on " + calendar.date(day), e.getCause());
            }
            for (int slot = 0; slot < calendar.slots(); slot++) {
                int number = day * calendar.slots() + slot;
                up.set(number, found[0].get(slot));
                for (int p = 0; p < shaded.size(); p++) {
                    shaded.get(p).set(number, found[p + 1].get(slot));
                }
            }
            if (!progress.goesOn(day + 1, days.size())) {
                return Optional.empty();
            }
        }
        List<String> names = platforms.stream().map(Platform::id).toList();
        return Optional.of(new ShadeYear(calendar, rule, names, up, shaded));
    }

    /** One day: first the moments with sun, then those at which each platform is shaded. */
    private BitSet[] look(int day) {
        BitSet[] found = new BitSet[platforms.size() + 1];
        for (int i = 0; i < found.length; i++) {
            found[i] = new BitSet();
        }
        int season = scene.season(MonthDay.from(calendar.date(day)));
        int[] casters = new int[scene.size()];
        for (int slot = 0; slot < calendar.slots(); slot++) {
            SunPosition sun = SunPosition.at(enclosure.site(), calendar.moment(day, slot));
            if (sun.altitudeDeg() <= rule.lowestSunDeg()) {
                continue;
            }
            found[0].set(slot);
            Point towards = sun.direction();
            boolean hidden = scene.isBelowHorizon(towards);
            for (int p = 0; p < grids.size(); p++) {
                found[p + 1].set(slot, hidden || isShaded(grids.get(p), towards, season, casters));
            }
        }
        return found;
    }

    private boolean isShaded(SampleGrid grid, Point sun, int season, int[] casters) {
        int n = scene.along(grid.middle(), grid.half(), sun, casters);
        int wanted = rule.leastPoints(grid.size());
        int shaded = 0;
        for (int i = 0; i < grid.size() && shaded < wanted && shaded + grid.size() - i >= wanted; i++) {
            double beam = scene.through(grid.x(i), grid.y(i), grid.z(), sun, season, casters, n, rule.mostBeam());
            shaded += beam <= rule.mostBeam() ? 1 : 0;
        }
        return shaded >= wanted;
    }
}
