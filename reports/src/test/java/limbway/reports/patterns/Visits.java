package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

/**
 * Visits to food: meals of one animal at one place that follow each other without a pause.
 *
 * @param animal number of the animal
 * @param resource number of the food place
 * @param startMs begin [ms]
 * @param endMs end [ms]
 */
record Visits(int animal, int resource, long startMs, long endMs) {

    private static final long DAY_MS = 86_400_000;
    private static final long PAUSE_MS = 60_000;

    /** Mean minutes a day of all but the first animal at its food, on days with the first one there, less on days without. */
    static Measurement minutesLostToFirst(Run run) {
        return perJournal(run, (outcome, visits) -> {
            double[] minutes = new double[2];
            int[] days = new int[2];
            int animals = outcome.habitat().animals().size();
            for (int resource : visits.stream().map(Visits::resource).distinct().toList()) {
                for (long day = 0; day < outcome.settings().days(); day++) {
                    long midnight = day * DAY_MS;
                    List<Visits> there = visits.stream()
                            .filter(v -> v.resource == resource && v.startMs / DAY_MS * DAY_MS == midnight)
                            .toList();
                    int attended = there.stream().anyMatch(v -> v.animal == 0) ? 1 : 0;
                    for (int animal = 1; animal < animals; animal++) {
                        int who = animal;
                        days[attended]++;
                        minutes[attended] += there.stream()
                                .filter(v -> v.animal == who)
                                .mapToDouble(Visits::minutes)
                                .sum();
                    }
                }
            }
            return minutes[0] / days[0] - minutes[1] / days[1];
        });
    }

    /** Mean number of animals at a food place while there is one. */
    static Measurement company(Run run) {
        return perJournal(run, (outcome, visits) -> {
            double together = 0;
            double occupied = 0;
            for (int resource : visits.stream().map(Visits::resource).distinct().toList()) {
                List<Visits> there =
                        visits.stream().filter(v -> v.resource == resource).toList();
                together += there.stream().mapToDouble(Visits::minutes).sum();
                occupied += occupiedMin(there);
            }
            return together / occupied;
        });
    }

    private static double occupiedMin(List<Visits> there) {
        List<Visits> ordered = new ArrayList<>(there);
        ordered.sort((a, b) -> Long.compare(a.startMs, b.startMs));
        double minutes = 0;
        long until = Long.MIN_VALUE;
        for (Visits visit : ordered) {
            minutes += Math.max(0, visit.endMs - Math.max(until, visit.startMs)) / 60_000.0;
            until = Math.max(until, visit.endMs);
        }
        return minutes;
    }

    @FunctionalInterface
    private interface Figure {
        double of(Outcome outcome, List<Visits> visits);
    }

    private static Measurement perJournal(Run run, Figure figure) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double value = figure.of(outcome, of(journal, stay -> stay.motive() == Motive.HUNGER));
                if (!Double.isNaN(value)) {
                    found.add(value);
                }
            }
            return found;
        };
    }

    private static List<Visits> of(Journal journal, Predicate<Stay> which) {
        List<Visits> found = new ArrayList<>();
        List<Stay> meals = new ArrayList<>(journal.stays().stream()
                .filter(which.and(stay -> stay.eatenJ() > 0))
                .toList());
        meals.sort((a, b) -> a.animal() == b.animal()
                ? Long.compare(a.startMs(), b.startMs())
                : Integer.compare(a.animal(), b.animal()));
        for (Stay meal : meals) {
            Visits last = found.isEmpty() ? null : found.get(found.size() - 1);
            if (last != null
                    && last.animal == meal.animal()
                    && last.resource == meal.resource()
                    && meal.startMs() - last.endMs <= PAUSE_MS) {
                found.set(found.size() - 1, new Visits(last.animal, last.resource, last.startMs, meal.endMs()));
            } else {
                found.add(new Visits(meal.animal(), meal.resource(), meal.startMs(), meal.endMs()));
            }
        }
        return found;
    }

    private double minutes() {
        return (endMs - startMs) / 60_000.0;
    }
}
