package limbway.sim.journal;

import java.util.List;
import java.util.function.Predicate;

/** Accounts that must balance: nothing is eaten that was not put out, and nothing spent that was not eaten or saved. */
public final class Ledger {

    private static final double RELATIVE_ERROR = 1e-9;
    private static final double LEAST_J = 1;

    private Ledger() {}

    /**
     * Checks that each animal's and each food place's account balances, and that animals ate what places lost.
     *
     * @param reserves one for each animal
     * @param stocks one for each food place
     * @throws IllegalStateException naming the account and both numbers
     */
    public static void check(List<Reserve> reserves, List<Stock> stocks) {
        double animalsAteJ = 0;
        for (Reserve reserve : reserves) {
            double spentJ = reserve.movedJ() + reserve.restingJ() + reserve.otherJ();
            double expectedJ = reserve.startJ() + reserve.eatenJ() - spentJ;
            double sizeJ = reserve.eatenJ() + spentJ;
            require("reserve of animal " + reserve.animal(), reserve.endJ(), expectedJ, sizeJ);
            animalsAteJ += reserve.eatenJ();
        }
        double placesLostJ = 0;
        for (Stock stock : stocks) {
            double expectedJ = stock.deliveredJ() - stock.eatenJ();
            require("food left at resource " + stock.resource(), stock.leftJ(), expectedJ, stock.deliveredJ());
            placesLostJ += stock.eatenJ();
        }
        require("food eaten by all animals", animalsAteJ, placesLostJ, placesLostJ);
    }

    /**
     * Checks a journal: its accounts, and that its trips and stays add up to them.
     *
     * @param journal what happened
     * @throws IllegalStateException naming the account and both numbers
     */
    public static void check(Journal journal) {
        check(journal.reserves(), journal.stocks());
        for (Reserve reserve : journal.reserves()) {
            double eatenJ = mealsJ(journal, stay -> stay.animal() == reserve.animal());
            require("meals of animal " + reserve.animal(), eatenJ, reserve.eatenJ(), reserve.eatenJ());
            double movedJ = journal.trips().stream()
                    .filter(trip -> trip.animal() == reserve.animal())
                    .mapToDouble(trip -> trip.way().milliJ() / 1000.0)
                    .sum();
            require("trips of animal " + reserve.animal(), movedJ, reserve.movedJ(), reserve.movedJ());
        }
        for (Stock stock : journal.stocks()) {
            double eatenJ = mealsJ(journal, stay -> stay.resource() == stock.resource());
            require("meals at resource " + stock.resource(), eatenJ, stock.eatenJ(), stock.eatenJ());
        }
    }

    private static double mealsJ(Journal journal, Predicate<Stay> which) {
        return journal.stays().stream().filter(which).mapToDouble(Stay::eatenJ).sum();
    }

    private static void require(String what, double foundJ, double expectedJ, double sizeJ) {
        if (!(Math.abs(foundJ - expectedJ) <= RELATIVE_ERROR * Math.max(LEAST_J, sizeJ))) {
            throw new IllegalStateException(
                    "ledger: " + what + " = " + foundJ + " J, by its account " + expectedJ + " J");
        }
    }
}
