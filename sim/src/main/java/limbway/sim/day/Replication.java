package limbway.sim.day;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import sim.engine.SimState;
import sim.engine.Steppable;

import limbway.sim.animal.Ape;
import limbway.sim.animal.Contest;
import limbway.sim.animal.Stalls;
import limbway.sim.chance.Chance;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Ledger;
import limbway.sim.journal.Reserve;

/**
 * One group living through its days, once.
 *
 * <p>Between two events nothing happens that could not be written down in closed form, so the clock jumps from event to
 * event. A whole trip is one event, booked when it is set out on.
 */
public final class Replication extends SimState {

    private static final long serialVersionUID = 1;

    private final transient RunPlan plan;
    private final transient AccountAudit audit;
    private final transient Chance chance;
    private final transient List<Ape> group;
    private final transient Larder larder;
    private final transient Recorder recorder;
    private final transient Conduct conduct;
    private final transient Doing[] doings;
    private final transient Steppable[][] ownEvents;
    private long nowMs;

    /**
     * A replication at midnight before day 1.
     *
     * @param plan what all replications of the run share
     * @param chance its chance
     * @param audit looks at the accounts after every event
     */
    public Replication(RunPlan plan, Chance chance, AccountAudit audit) {
        this(plan, chance, audit, new Larder(plan.resources().size()));
    }

    Replication(RunPlan plan, Chance chance, AccountAudit audit, Larder larder) {
        super(chance.seed());
        this.plan = plan;
        this.audit = audit;
        this.chance = chance;
        this.larder = larder;
        recorder = new Recorder(plan.warmUpMs());
        group = plan.group(chance);
        Stalls stalls = new Stalls(plan.resources());
        new Bedding(plan.graph(), stalls).giveOut(group);
        doings = group.stream().map(ape -> new Doing()).toArray(Doing[]::new);
        Contest contest = new Contest(group, plan.resources(), plan.settings().company(), chance);
        conduct = new Conduct(plan, group, new Clock(), larder, stalls, contest, recorder);
        ownEvents = group.stream().map(this::ownEvents).toArray(Steppable[][]::new);
    }

    private Steppable[] ownEvents(Ape ape) {
        EventClass[] classes = EventClass.values();
        Steppable[] events = new Steppable[classes.length];
        for (EventClass what : classes) {
            events[what.ordinal()] = state -> own(ape, what);
        }
        return events;
    }

    /**
     * Lives through all days.
     *
     * @param stop asked after every event; true ends the replication early
     * @return what happened, or empty if it was ended early
     */
    public Optional<Journal> run(BooleanSupplier stop) {
        group.forEach(conduct::begin);
        for (int i = 0; i < plan.deliveries().size(); i++) {
            scheduleDelivery(plan.deliveries().get(i), i, 1);
        }
        for (int r = 0; r < plan.resources().size(); r++) {
            scheduleShutting(r, 0);
        }
        if (plan.warmUpMs() > 0) {
            put(plan.warmUpMs(), EventClass.COUNT.ordering(0), state -> count());
        }
        while (schedule.step(this)) {
            if (stop.getAsBoolean()) {
                return Optional.empty();
            }
        }
        nowMs = plan.endMs();
        group.forEach(conduct::close);
        Journal journal = recorder.journal(chance.replication(), reserves(), larder.stocks(plan.resources()));
        Ledger.check(journal.reserves(), journal.stocks());
        return Optional.of(journal);
    }

    /** The animals, by number. */
    List<Ape> group() {
        return group;
    }

    private void put(long ms, int ordering, Steppable event) {
        if (ms < plan.endMs()) {
            schedule.scheduleOnce((double) ms, ordering, event);
        }
    }

    private void own(Ape ape, EventClass what) {
        nowMs = (long) schedule.getTime();
        if (doings[ape.number()].isDue(nowMs, what)) {
            conduct.happen(ape, what);
            check();
        }
    }

    private void scheduleDelivery(Delivery delivery, int number, int day) {
        long ms = (day - 1) * Almanac.DAY_MS + delivery.clockMs();
        put(ms, EventClass.DELIVERY.ordering(number), state -> deliver(delivery, number, day));
    }

    private void scheduleShutting(int resource, long afterMs) {
        long ms = plan.keepersHours().shutsAtMs(resource, afterMs);
        if (ms < plan.endMs()) {
            put(ms, EventClass.SHUTTING.ordering(resource), state -> shut(resource));
        }
    }

    private void shut(int resource) {
        nowMs = (long) schedule.getTime();
        conduct.shut(resource);
        scheduleShutting(resource, nowMs);
        check();
    }

    /** The days to warm up are over. */
    private void count() {
        nowMs = (long) schedule.getTime();
        larder.restart();
        for (Ape ape : group) {
            ape.advance(nowMs);
            ape.count(nowMs);
        }
    }

    private void deliver(Delivery delivery, int number, int day) {
        nowMs = (long) schedule.getTime();
        for (Delivery.Portion portion : delivery.portions()) {
            larder.deliver(portion);
        }
        for (Ape ape : group) {
            conduct.hear(ape, delivery);
        }
        scheduleDelivery(delivery, number, day + 1);
        check();
    }

    private void check() {
        if (audit != AccountAudit.OFF) {
            audit.check(reserves(), larder.stocks(plan.resources()));
        }
    }

    private List<Reserve> reserves() {
        return group.stream().map(Replication::reserve).toList();
    }

    static Reserve reserve(Ape ape) {
        return new Reserve(
                ape.number(),
                ape.account().startJ(),
                ape.account().eatenJ(),
                ape.account().movedJ(),
                ape.body().restingJPerMs() * (ape.needs().atMs() - ape.account().startMs()),
                ape.account().otherJ(ape.needs().atMs()),
                -ape.needs().missingJ());
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
            if (ms <= nowMs) {
                // MASON would move it on by a fraction of a millisecond, without a word
                throw new IllegalStateException("clock: event at " + ms + " ms, allowed after " + nowMs + " ms");
            }
            doing(ape).expect(ms, what);
            put(ms, what.ordering(ape.number()), ownEvents[ape.number()][what.ordinal()]);
        }
    }
}
