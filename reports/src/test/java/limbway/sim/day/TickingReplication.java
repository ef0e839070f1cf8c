package limbway.sim.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.sim.animal.Ape;
import limbway.sim.animal.Contest;
import limbway.sim.animal.Stalls;
import limbway.sim.chance.Chance;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Reserve;

/**
 * The same group, needs, choices, stalls and food as in {@link Replication}, under a clock that ticks every second instead
 * of jumping from event to event.
 *
 * <p>At every tick it looks at every animal. Whatever comes up between two ticks happens at the second of them. It does less
 * at a tick than most simulators that tick: no step along the way, no bite of food. Layouts without closures, runs
 * without days to warm up.
 */
public final class TickingReplication {

    private static final long TICK_MS = 1000;
    private static final long NEVER = Long.MAX_VALUE;

    private final RunPlan plan;
    private final boolean keepsNeeds;
    private final Chance chance;
    private final List<Ape> group;
    private final Larder larder;
    private final Recorder recorder = new Recorder(0);
    private final Doing[] doings;
    private final long[] dueMs;
    private final EventClass[] due;
    private final Conduct conduct;
    private long nowMs;

    /**
     * A replication at midnight before day 1.
     *
     * @param plan what is lived
     * @param chance its chance
     * @param keepsNeeds whether needs are brought up to date at every tick; if not, a tick only looks at the clock
     */
    public TickingReplication(RunPlan plan, Chance chance, boolean keepsNeeds) {
        this.plan = plan;
        this.chance = chance;
        this.keepsNeeds = keepsNeeds;
        for (int r = 0; r < plan.resources().size(); r++) {
            if (plan.keepersHours().shutsAtMs(r, 0) != NEVER) {
                throw new IllegalArgumentException("ticking: closures = yes, allowed none");
            }
        }
        larder = new Larder(plan.resources().size());
        group = plan.group(chance);
        doings = group.stream().map(ape -> new Doing()).toArray(Doing[]::new);
        dueMs = new long[group.size()];
        Arrays.fill(dueMs, NEVER);
        due = new EventClass[group.size()];
        Stalls stalls = new Stalls(plan.resources());
        new Bedding(plan.graph(), stalls).giveOut(group);
        Contest contest = new Contest(group, plan.resources(), plan.settings().company(), chance);
        conduct = new Conduct(plan, group, new Clock(), larder, stalls, contest, recorder);
    }

    /**
     * Lives through all days.
     *
     * @return what happened
     */
    public Journal run() {
        group.forEach(conduct::begin);
        long[] deliverMs =
                plan.deliveries().stream().mapToLong(Delivery::clockMs).toArray();
        Ape[] animals = group.toArray(Ape[]::new);
        for (nowMs = TICK_MS; nowMs < plan.endMs(); nowMs += TICK_MS) {
            for (int i = 0; i < deliverMs.length; i++) {
                if (deliverMs[i] <= nowMs) {
                    deliver(plan.deliveries().get(i));
                    deliverMs[i] += Almanac.DAY_MS;
                }
            }
            for (int i = 0; i < animals.length; i++) {
                if (keepsNeeds) {
                    animals[i].advance(nowMs);
                }
                if (dueMs[i] <= nowMs) {
                    dueMs[i] = NEVER;
                    conduct.happen(animals[i], due[i]);
                }
            }
        }
        nowMs = plan.endMs();
        group.forEach(conduct::close);
        List<Reserve> reserves = new ArrayList<>();
        group.forEach(ape -> reserves.add(Replication.reserve(ape)));
        return recorder.journal(chance.replication(), reserves, larder.stocks(plan.resources()));
    }

    private void deliver(Delivery delivery) {
        delivery.portions().forEach(larder::deliver);
        group.forEach(ape -> conduct.hear(ape, delivery));
    }

    /** The clock and the doings, for the animals' conduct. */
    private final class Clock implements Diary {

        @Override
        public long nowMs() {
            return nowMs;
        }

        @Override
        public Doing doing(Ape ape) {
            return doings[ape.number()];
        }

        @Override
        public void expect(Ape ape, long ms, EventClass what) {
            doing(ape).expect(ms, what);
            dueMs[ape.number()] = ms;
            due[ape.number()] = what;
        }
    }
}
