package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.study.Feeding;
import limbway.model.study.FeedingMethod;
import limbway.model.study.Keeping;

/** Shares what is fed evenly with new places, so that no more food is put out than before. */
final class SharedFood {

    private static final double TENTHS = 10;

    private SharedFood() {}

    /** The same plan with the new places fed too. */
    static Keeping among(Keeping keeping, List<String> fresh) {
        return new Keeping(
                feedings(keeping, fresh), keeping.bedding(), keeping.closures(), keeping.staff(), keeping.viewpoints());
    }

    /** In the order of the day; at the same time those of the old places first, in their order. */
    private static List<Feeding> feedings(Keeping keeping, List<String> fresh) {
        long fed = keeping.feedings().stream().map(Feeding::resource).distinct().count();
        double all = fed + fresh.size();
        List<Feeding> plan = new ArrayList<>();
        for (Feeding old : keeping.feedings()) {
            plan.add(new Feeding(
                    old.resource(), old.at(), tenths(old.energyKj() * fed / all), old.method(), old.handlingMin()));
        }
        for (String id : fresh) {
            Map<Round, Double> rounds = new LinkedHashMap<>();
            for (Feeding old : keeping.feedings()) {
                rounds.merge(Round.of(old), old.energyKj() / all, Double::sum);
            }
            rounds.forEach((round, kj) ->
                    plan.add(new Feeding(id, round.at(), tenths(kj), round.method(), round.handlingMin())));
        }
        plan.sort(Comparator.comparing(Feeding::at));
        return plan;
    }

    private record Round(java.time.LocalTime at, FeedingMethod method, double handlingMin) {
        static Round of(Feeding feeding) {
            return new Round(feeding.at(), feeding.method(), feeding.handlingMin());
        }
    }

    static List<String> lines(Keeping keeping, List<String> fresh) {
        List<String> lines = new ArrayList<>();
        // feedings of one list of changes add up, so those of an earlier answer in the same list are ended first
        keeping.feedings().stream().map(Feeding::resource).distinct().forEach(id -> lines.add("{unfeed: " + id + "}"));
        for (Feeding feeding : feedings(keeping, fresh)) {
            String given = feeding.method() == FeedingMethod.HEAP
                    ? ""
                    : ", given: " + feeding.method().word();
            String handling = feeding.handlingMin() > 0 ? ", handling-min: " + feeding.handlingMin() : "";
            lines.add("{feed: " + feeding.resource() + ", at: \"" + feeding.at() + "\", energy-kj: "
                    + feeding.energyKj() + given + handling + "}");
        }
        return lines;
    }

    private static double tenths(double kj) {
        return Math.round(kj * TENTHS) / TENTHS;
    }
}
