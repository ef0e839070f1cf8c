package limbway.sim.habitat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.BitSet;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.heat.OperativeTemperature;
import limbway.model.light.SunPosition;
import limbway.model.shade.ShadeScene;
import limbway.model.weather.Conditions;
import limbway.model.weather.Weather;

/** Looks up sun, shade and heat at the places and along the ways of a layout, once before a run. */
final class Exposure {

    private static final long STEP_MS = 15 * 60_000;
    private static final int SLOTS = (int) (86_400_000 / STEP_MS);
    /** In a week the sun moves by up to 3 degrees, less than it does in one step. */
    private static final int DAYS_PER_SAMPLE = 7;
    /** The middle of a body above the hold that it sits on [m], an assumption. */
    private static final double BODY_M = 0.4;

    private final RouteGraph graph;
    private final Site site;
    private final ShadeScene scene;
    private final Weather weather;
    private final OperativeTemperature felt;

    Exposure(RouteGraph graph, Site site, ShadeScene scene, Weather weather, OperativeTemperature felt) {
        this.graph = graph;
        this.site = site;
        this.scene = scene;
        this.weather = weather;
        this.felt = felt;
    }

    /** Operative temperature at the holds where animals may stop, in the middle of each step of the run. */
    Warmth warmth(Passages passages, LocalDate date, int days) {
        int starts = passages.startCount();
        float[] operativeC = new float[starts * days * SLOTS];
        Point[] bodies = new Point[starts];
        for (int start = 0; start < starts; start++) {
            bodies[start] = body(graph.place(passages.hold(start)));
        }
        double[] sky = new double[starts];
        int season = -1;
        for (int day = 0; day < days; day++) {
            int now = scene.season(MonthDay.from(date.plusDays(day)));
            if (now != season) {
                season = now;
                for (int start = 0; start < starts; start++) {
                    sky[start] = scene.sky(bodies[start].xM(), bodies[start].yM(), bodies[start].zM(), season);
                }
            }
            for (int slot = 0; slot < SLOTS; slot++) {
                Instant moment = moment(date.plusDays(day), slot);
                SunPosition sun = SunPosition.at(site, moment);
                Conditions conditions = weather.at(site, moment);
                for (int start = 0; start < starts; start++) {
                    double beam = beam(bodies[start], sun, season);
                    operativeC[(start * days + day) * SLOTS + slot] =
                            (float) felt.ofPlaceC(conditions, beam, sky[start], sun.altitudeDeg());
                }
            }
        }
        return new Warmth(starts, STEP_MS, operativeC);
    }

    /**
     * The discomfort of the sun on each way: watts for each second in full sun, times how hot it is in the open then.
     *
     * @param trouble from operative temperature [°C] to the share of the discomfort that is felt, 0 to 1
     */
    SunlitWays sunlitWays(
            Passages passages, MoveCosts costs, double watt, DoubleUnaryOperator trouble, LocalDate date, int days) {
        int samples = (days + DAYS_PER_SAMPLE - 1) / DAYS_PER_SAMPLE;
        float[] discomfortJ = new float[passages.count() * 2 * samples * SLOTS];
        BitSet used = used(passages);
        float[] sunlit = new float[graph.moveCount()];
        for (int sample = 0; sample < samples; sample++) {
            LocalDate day = date.plusDays((long) sample * DAYS_PER_SAMPLE);
            int season = scene.season(MonthDay.from(day));
            for (int slot = 0; slot < SLOTS; slot++) {
                Instant moment = moment(day, slot);
                SunPosition sun = SunPosition.at(site, moment);
                double felt01 = trouble.applyAsDouble(felt.ofPlaceC(weather.at(site, moment), 1, 1, sun.altitudeDeg()));
                if (sun.altitudeDeg() <= 0 || felt01 <= 0) {
                    continue;
                }
                for (int move = used.nextSetBit(0); move >= 0; move = used.nextSetBit(move + 1)) {
                    Point from = graph.place(graph.from(move));
                    Point to = graph.place(graph.to(move));
                    double beam = beam(body(from.plus(to).times(0.5)), sun, season);
                    sunlit[move] = (float) (watt * felt01 * beam * costs.seconds(move));
                }
                for (int way = 0; way < passages.count() * 2; way++) {
                    double sum = 0;
                    for (int move : moves(passages, way)) {
                        sum += sunlit[move];
                    }
                    discomfortJ[(way * samples + sample) * SLOTS + slot] = (float) sum;
                }
            }
        }
        return new SunlitWays(STEP_MS, SLOTS, DAYS_PER_SAMPLE, discomfortJ);
    }

    private static List<Integer> moves(Passages passages, int way) {
        return passages.hasWay(way / 2, way % 2 == 1)
                ? passages.way(way / 2, way % 2 == 1).moves()
                : List.of();
    }

    private static BitSet used(Passages passages) {
        BitSet used = new BitSet();
        for (int way = 0; way < passages.count() * 2; way++) {
            moves(passages, way).forEach(used::set);
        }
        return used;
    }

    private double beam(Point body, SunPosition sun, int season) {
        return sun.altitudeDeg() <= 0 ? 0 : scene.beam(body.xM(), body.yM(), body.zM(), sun.direction(), season);
    }

    private static Point body(Point hold) {
        return new Point(hold.xM(), hold.yM(), hold.zM() + BODY_M);
    }

    /** The middle of a step, by the clock on the wall. */
    private Instant moment(LocalDate day, int slot) {
        LocalTime time = LocalTime.ofSecondOfDay((slot * STEP_MS + STEP_MS / 2) / 1000);
        return LocalDateTime.of(day, time).atZone(site.zone()).toInstant();
    }
}
