package limbway.reports.bench;

import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.shade.BruteShade;
import limbway.model.shade.RandomShade;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeProgress;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;

/**
 * Question: how long does a year of shade take, how does that grow with what stands around, and what does the tree of boxes
 * save against asking everything for every point?
 *
 * <p>40 platforms of 25 points, every quarter of an hour of a year, two threads; two fifths sheets, two fifths beams, one
 * fifth crowns. A yard of 63 m is full of shade with 5,000 of them; one of 200 m holds them as loosely as the small one holds 500.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class ShadeBenchmark {

    private static final int PLATFORMS = 40;
    private static final int THREADS = 2;
    private static final int DAYS_APART = 60;
    private static final int SLOTS_APART = 11;
    private static final double NANOS_PER_SECOND = 1e9;

    /** What casts shade, besides the platforms. */
    @Param({"500", "5000"})
    public int occluders;

    /** Side of the yard [m]. */
    @Param({"63", "200"})
    public int yardM;

    private Enclosure enclosure;
    private ShadeCalendar calendar;
    private List<String> names;
    private double fastestSeconds = Double.POSITIVE_INFINITY;
    private int moments;

    /** Fills the yard. */
    @Setup
    public void build() {
        enclosure = RandomShade.yard(1, yardM, PLATFORMS, occluders);
        calendar = new ShadeCalendar(2026, 15, ZoneOffset.ofHours(8));
        names = enclosure.platforms().stream().map(Platform::id).toList();
    }

    /**
     * A year.
     *
     * @return the year
     */
    @Benchmark
    public ShadeYear year() {
        long start = System.nanoTime();
        ShadeYear year = ShadeAudit.of(
                        enclosure,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        calendar,
                        names,
                        THREADS,
                        ShadeProgress.NONE)
                .orElseThrow();
        fastestSeconds = Math.min(fastestSeconds, (System.nanoTime() - start) / NANOS_PER_SECOND);
        moments = year.sunMinutes() / calendar.stepMin();
        return year;
    }

    /** Sets brute force on some moments, scales its time to a year and as many threads, and says how the two compare. */
    @TearDown(Level.Trial)
    public void compare() {
        double points = (double) moments * PLATFORMS * ShadeAudit.PER_SIDE * ShadeAudit.PER_SIDE;
        System.out.printf(
                "fastest year %.2f s, %.1f million points a second%n", fastestSeconds, points / fastestSeconds / 1e6);
        tell("every caster for every point", false);
        tell("stopping at points that are dark enough", true);
    }

    private void tell(String how, boolean stopsWhenDark) {
        BruteShade brute = new BruteShade(enclosure, ShadeRule.standard(), calendar, stopsWhenDark);
        int looked = 0;
        long nanos = 0;
        for (int day = 3; day < calendar.days(); day += DAYS_APART) {
            for (int slot = 0; slot < calendar.slots(); slot += SLOTS_APART) {
                if (brute.isSunUp(day, slot)) {
                    long start = System.nanoTime();
                    brute.shaded(day, slot);
                    nanos += System.nanoTime() - start;
                    looked++;
                }
            }
        }
        double seconds = nanos / NANOS_PER_SECOND / looked * moments / THREADS;
        System.out.printf("brute force, %s: %.0f s, %.0f times%n", how, seconds, seconds / fastestSeconds);
    }
}
