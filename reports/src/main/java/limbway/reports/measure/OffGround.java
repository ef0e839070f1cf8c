package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.study.Animal;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/**
 * Shares of travel off the ground, of all and of parts.
 *
 * @param overall all animals together
 * @param byBody by name of the body, in the order of the animals
 * @param byAnimal by name of the animal, in the order of the study
 * @param byHour hours in which somebody set out, ascending
 */
public record OffGround(
        OffGroundShare overall,
        Map<String, OffGroundShare> byBody,
        Map<String, OffGroundShare> byAnimal,
        List<HourOfDay> byHour) {

    private static final long HOUR_MS = 3_600_000;
    private static final int HOURS = 24;

    /** Keeps copies in the same order. */
    public OffGround {
        byBody = Collections.unmodifiableMap(new LinkedHashMap<>(byBody));
        byAnimal = Collections.unmodifiableMap(new LinkedHashMap<>(byAnimal));
        byHour = List.copyOf(byHour);
    }

    /**
     * Computes all shares.
     *
     * @param outcome a run with at least one finished replication
     * @return the shares
     */
    public static OffGround of(Outcome outcome) {
        List<Journal> journals = outcome.journals();
        List<Animal> animals = outcome.habitat().animals();
        Map<String, OffGroundShare> byBody = new LinkedHashMap<>();
        for (Body body : outcome.habitat().bodies()) {
            byBody.put(body.name(), OffGroundShare.of(journals, trip -> animals.get(trip.animal())
                    .body()
                    .name()
                    .equals(body.name())));
        }
        Map<String, OffGroundShare> byAnimal = new LinkedHashMap<>();
        for (int a = 0; a < animals.size(); a++) {
            int number = a;
            byAnimal.put(animals.get(a).name(), OffGroundShare.of(journals, trip -> trip.animal() == number));
        }
        return new OffGround(
                OffGroundShare.of(journals, trip -> true),
                byBody,
                byAnimal,
                byHour(journals, outcome.settings().days()));
    }

    private static List<HourOfDay> byHour(List<Journal> journals, int days) {
        double[] offGroundM = new double[HOURS];
        double[] groundM = new double[HOURS];
        for (Journal journal : journals) {
            for (Trip trip : journal.trips()) {
                offGroundM[hour(trip)] += trip.way().offGroundM();
                groundM[hour(trip)] += trip.way().lengthM() - trip.way().offGroundM();
            }
        }
        double runDays = (double) journals.size() * days;
        List<HourOfDay> hours = new ArrayList<>();
        for (int h = 0; h < HOURS; h++) {
            int hour = h;
            OffGroundShare share = OffGroundShare.of(journals, trip -> hour(trip) == hour);
            if (!share.byAspect().isEmpty()) {
                hours.add(new HourOfDay(h, share, offGroundM[h] / runDays, groundM[h] / runDays));
            }
        }
        return hours;
    }

    private static int hour(Trip trip) {
        return (int) (trip.startMs() / HOUR_MS % HOURS);
    }
}
