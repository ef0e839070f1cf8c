package limbway.model.explain.flip;

import java.util.Optional;

/**
 * The least size at which a change turns the trip, to the millimetre, or to the centimetre where that is a small part of it.
 *
 * <p>Narrows down by halves, or by proportion where both ends have a way off the ground, between a size that does not turn it
 * and one that does. Rounded up, so that the size named does turn it.
 */
final class Threshold {

    private static final int MOST_TRIED = 24;

    private final ChangeTrial trial;

    Threshold(ChangeTrial trial) {
        this.trial = trial;
    }

    /**
     * Narrows down.
     *
     * @param failsM a size that does not turn the trip, 0 or more
     * @param failsBy how much dearer the way off the ground is at that size [mJ]; empty where there is none
     * @param works a change that turns it
     * @param hintM where the least size is expected [m]; not a number where nothing is expected
     * @return the change of the least size between both; {@code works} if nothing less does
     */
    Flip between(double failsM, Optional<Long> failsBy, Flip works, double hintM) {
        double low = failsM;
        Optional<Long> lowBy = failsBy;
        Flip best = works;
        for (int i = 0;
                i < MOST_TRIED && best.change().amountM() - low > Steps.FINE_M * 1.5 && trial.canAfford(2);
                i++) {
            double high = best.change().amountM();
            double guessM = i < 2 && !Double.isNaN(hintM)
                    ? hintM - i * Steps.FINE_M
                    : i % 3 == 2 || lowBy.isEmpty()
                            ? (low + high) / 2
                            : low
                                    + (high - low)
                                            * lowBy.get()
                                            / (lowBy.get() - best.then().temptationMilliJ());
            double triedM = Steps.millimetre(Math.max(low + Steps.FINE_M, Math.min(high - Steps.FINE_M, guessM)));
            Change tried = best.change().withAmount(triedM);
            Optional<TripCost> cost = trial.cost(tried);
            if (cost.isPresent() && cost.get().isOffGround()) {
                best = trial.flip(tried, cost.get());
            } else {
                low = triedM;
                lowBy = cost.filter(TripCost::hasOffGround).map(TripCost::temptationMilliJ);
            }
        }
        return rounded(best, works);
    }

    private Flip rounded(Flip best, Flip works) {
        double amountM = best.change().amountM();
        double coarseM = Steps.centimetre(Math.ceil(amountM / Steps.COARSE_M - 1e-6) * Steps.COARSE_M);
        if (amountM < Steps.COARSE_FROM_M || coarseM > works.change().amountM() || coarseM == amountM) {
            return best;
        }
        return trial.flip(best.change().withAmount(coarseM)).orElse(best);
    }
}
