package limbway.sim.experiment.statistics;

import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

/**
 * A queue with one server, lived through by some customers who find it in its steady state; times in minutes.
 *
 * <p>With arrivals at a rate a and service at a rate s the mean wait is (a/s) / (s - a). The wait of the first customer is drawn
 * from the steady state: nothing with chance 1 - a/s, else exponential with rate s - a. Means of waits are skewed and far from
 * normal.
 *
 * @param arrivalsPerMin rate of arrivals
 * @param servicesPerMin rate of service
 */
record WaitingLine(double arrivalsPerMin, double servicesPerMin) {

    private static final int CUSTOMERS = 200;

    static final WaitingLine SLOW = new WaitingLine(0.05, 0.10);
    static final WaitingLine FAST = new WaitingLine(0.05, 0.125);

    /** The textbook's mean wait [min]. */
    double meanWaitMin() {
        return arrivalsPerMin / servicesPerMin / (servicesPerMin - arrivalsPerMin);
    }

    /** The mean wait of some customers [min]; the same chance means the same customers. */
    double wait(Stream chance) {
        double idle = 1 - arrivalsPerMin / servicesPerMin;
        double first = chance.uniform(0, 0);
        double wait = first < idle ? 0 : -StrictMath.log((1 - first) / (1 - idle)) / (servicesPerMin - arrivalsPerMin);
        double sum = 0;
        for (int c = 1; c <= CUSTOMERS; c++) {
            sum += wait;
            double service = -StrictMath.log(chance.uniform(c, 1)) / servicesPerMin;
            double pause = -StrictMath.log(chance.uniform(c, 2)) / arrivalsPerMin;
            wait = Math.max(0, wait + service - pause);
        }
        return sum / CUSTOMERS;
    }

    /** Mean waits of several repetitions. */
    double[] waits(int experiment, int luck, int repetitions) {
        double[] waits = new double[repetitions];
        for (int r = 0; r < repetitions; r++) {
            waits[r] = wait(new Chance(1 + experiment, 1 + r).stream("customers of " + luck, Purpose.CONTEST));
        }
        return waits;
    }
}
