package limbway.reports.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import limbway.reports.measure.AnimalEnergy;

/** Says which animals eat clearly less than they spend. */
public final class HungerText {

    private HungerText() {}

    /**
     * A warning about hungry animals.
     *
     * @param energy the accounts of all animals
     * @return one sentence, or empty if nobody goes hungry
     */
    public static Optional<String> of(List<AnimalEnergy> energy) {
        List<AnimalEnergy> hungry =
                energy.stream().filter(AnimalEnergy::goesHungry).toList();
        if (hungry.isEmpty()) {
            return Optional.empty();
        }
        String names = hungry.stream()
                .map(animal -> animal.animal() + " eats " + Math.round(100 * animal.eatenOverSpent()) + " %")
                .collect(Collectors.joining(", "));
        return Optional.of(names + " of what " + (hungry.size() == 1 ? "it spends" : "they spend")
                + ": too little food, too slow to eat, or kept from it by others. Look at this before anything else.");
    }
}
