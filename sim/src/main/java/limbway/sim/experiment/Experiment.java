package limbway.sim.experiment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;

import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.day.AccountAudit;
import limbway.sim.day.Replication;
import limbway.sim.day.RunPlan;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

/**
 * Runs replications on several threads.
 *
 * <p>Each replication has its own chance, keyed by its number, and its result is stored under its number. The journals
 * are therefore the same for any number of threads.
 */
public final class Experiment {

    private final RunSettings settings;
    private final RunPlan plan;
    private final AccountAudit audit;

    private Experiment(Habitat habitat, RunSettings settings, DaySettings day, AccountAudit audit) {
        this.settings = settings;
        this.plan = new RunPlan(habitat, day, settings.date(), settings.days(), settings.warmUpDays());
        this.audit = audit;
    }

    /**
     * Runs a layout.
     *
     * <p>If the calling thread is interrupted, or {@link Progress#wantsStop} says so, the replications under way are
     * dropped and those that are finished are returned; the interrupt is then spent, because the outcome tells of it.
     *
     * @param habitat the layout and the group
     * @param settings seed, replications, days, date, threads
     * @param day how animals spend their day
     * @param progress told of every finished replication
     * @return what happened
     * @throws IllegalArgumentException if no animal could stop anywhere, or food is put out at a place that does not exist
     */
    public static Outcome run(Habitat habitat, RunSettings settings, DaySettings day, Progress progress) {
        return run(habitat, settings, day, progress, AccountAudit.OFF);
    }

    /**
     * Runs a layout and looks at the accounts after every event, which is slow.
     *
     * @param habitat the layout and the group
     * @param settings seed, replications, days, date, threads
     * @param day how animals spend their day
     * @param progress told of every finished replication
     * @param audit what looks at the accounts
     * @return what happened
     * @throws IllegalStateException if an account does not balance
     */
    public static Outcome run(
            Habitat habitat, RunSettings settings, DaySettings day, Progress progress, AccountAudit audit) {
        Journal[] journals = new Journal[settings.replications()];
        boolean complete = new Experiment(habitat, settings, day, audit)
                .run(progress, journal -> journals[journal.replication() - settings.firstReplication()] = journal);
        List<Journal> done = Stream.of(journals).filter(Objects::nonNull).toList();
        return new Outcome(habitat, settings, done, complete);
    }

    /**
     * Runs a layout and hands over each replication as soon as it is finished, so that no journal need be kept.
     *
     * @param habitat the layout and the group
     * @param settings seed, replications, days, date, threads
     * @param day how animals spend their day
     * @param progress told of every finished replication
     * @param each takes the journals, in any order, several at once, on the threads that lived them
     * @return whether all replications were finished
     * @throws IllegalArgumentException if no animal could stop anywhere, or food is put out at a place that does not exist
     */
    public static boolean forEach(
            Habitat habitat, RunSettings settings, DaySettings day, Progress progress, Consumer<Journal> each) {
        return new Experiment(habitat, settings, day, AccountAudit.OFF).run(progress, each);
    }

    private boolean run(Progress progress, Consumer<Journal> each) {
        return Workers.all(
                        settings.replications(),
                        settings.threads(),
                        progress,
                        (index, stop) -> replicate(index, each, stop))
                .isPresent();
    }

    private Optional<Boolean> replicate(int index, Consumer<Journal> each, BooleanSupplier stop) {
        Chance chance = new Chance(settings.seed(), settings.firstReplication() + index);
        Optional<Journal> journal = new Replication(plan, chance, audit).run(stop);
        journal.ifPresent(each);
        return journal.map(lived -> true);
    }
}
