package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.DailyExpenditure;
import limbway.model.study.Animal;
import limbway.model.study.Feeding;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/** Places and food against the size of the group. */
final class KeepingAudit {

    /**
     * Food within these shares of the daily need is not remarked on; assumption. The lower allows for the spread of
     * measured expenditure, the upper for what is spoilt or left because it comes too slowly.
     */
    private static final double LEAST_FED = 0.9;

    private static final double MOST_FED = 1.3;

    private static final double J_PER_KJ = 1000;

    private final Habitat habitat;
    private final List<Finding> findings = new ArrayList<>();

    KeepingAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        places(ResourceKind.FOOD, Weight.MEND, "to eat at once");
        places(ResourceKind.WATER, Weight.MEND, "");
        places(ResourceKind.NEST, Weight.MEND, "to sleep");
        food();
        return findings;
    }

    private void places(ResourceKind kind, Weight whereNone, String purpose) {
        int stalls = 0;
        List<String> names = new ArrayList<>();
        for (Resource resource : habitat.layout().enclosure().resources()) {
            if (resource.kind() == kind) {
                stalls += resource.stalls();
                names.add(resource.id());
            }
        }
        int animals = habitat.animals().size();
        String mend = "add places of kind " + kind.word();
        if (names.isEmpty()) {
            String text = "there is no " + kind.word() + " for " + animals + " animals";
            findings.add(new Finding(
                    "none",
                    whereNone,
                    kind.word(),
                    "",
                    OptionalDouble.of(0),
                    "places",
                    text,
                    mend,
                    text,
                    Optional.empty()));
        } else if (!purpose.isEmpty() && stalls < animals) {
            String text = stalls + " " + kind.word() + (stalls == 1 ? " place" : " places") + " for " + animals
                    + " animals " + purpose + ": those of low rank wait or go without";
            findings.add(new Finding(
                    "too-few-places",
                    Weight.CAUTION,
                    String.join(", ", names),
                    "",
                    OptionalDouble.of(stalls),
                    "places",
                    text,
                    mend,
                    text,
                    Optional.empty()));
        }
    }

    private void food() {
        double fedJ = 0;
        for (Feeding feeding : habitat.layout().feedings()) {
            fedJ += feeding.energyKj() * J_PER_KJ;
        }
        double neededJ = 0;
        for (Animal animal : habitat.animals()) {
            neededJ += DailyExpenditure.jPerDay(animal.body().massKg());
        }
        double share = fedJ / neededJ;
        boolean fits = share >= LEAST_FED && share <= MOST_FED;
        String text = "food put out is " + Figures.energy(fedJ) + " a day, " + Figures.decimals(100 * share, 0)
                + " % of the " + Figures.energy(neededJ) + " that the group spends";
        findings.add(new Finding(
                "food-total",
                fits ? Weight.NOTE : Weight.CAUTION,
                "",
                "",
                OptionalDouble.of(fedJ / J_PER_KJ),
                "kJ/day",
                text,
                fits ? "nothing" : amends(fedJ, neededJ),
                text,
                Optional.empty()));
    }

    private static String amends(double fedJ, double neededJ) {
        boolean little = fedJ < neededJ;
        double byJ = little ? LEAST_FED * neededJ - fedJ : fedJ - MOST_FED * neededJ;
        return "put out at least " + Figures.energy(byJ) + " a day " + (little ? "more" : "less")
                + ", to feed between 90 % and 130 % of what the group spends, or say what else it eats";
    }
}
