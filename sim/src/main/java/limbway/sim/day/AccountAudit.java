package limbway.sim.day;

import java.util.List;

import limbway.sim.journal.Ledger;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stock;

/** Looks at the accounts after every event. */
@FunctionalInterface
public interface AccountAudit {

    /** Looks at nothing. */
    AccountAudit OFF = (reserves, stocks) -> {};

    /** Throws as soon as an account does not balance. */
    AccountAudit STRICT = Ledger::check;

    /**
     * Looks at all accounts.
     *
     * @param reserves one for each animal, as of its last event
     * @param stocks one for each food place
     * @throws IllegalStateException if an account does not balance
     */
    void check(List<Reserve> reserves, List<Stock> stocks);
}
