package limbway.sim.food;

/**
 * How fast an animal has gained energy of late, over the time that it spent feeding and going to food.
 *
 * <p>Gain and time fade alike, exponentially in that time, and the rate is their quotient. So there is no first guess: the
 * rate is 0 until something has been gained, and then the plain mean until much more time has passed than the memory lasts.
 */
public final class RunningRate {

    private final double memoryMs;
    private double gainJ;
    private double timeMs;

    /**
     * Nothing gained yet.
     *
     * @param memoryMs time in which what was gained fades by 63 % [ms], above 0
     */
    public RunningRate(double memoryMs) {
        this.memoryMs = memoryMs;
    }

    /**
     * Lets a stretch of feeding, or of going to food, pass; energy is taken to come evenly within it.
     *
     * @param joule energy gained, less than 0 if it was spent [J]
     * @param ms how long it took [ms]; a stretch of no time is passed over
     */
    public void pass(double joule, double ms) {
        if (ms > 0) {
            double kept = StrictMath.exp(-ms / memoryMs);
            double weightMs = memoryMs * (1 - kept);
            gainJ = gainJ * kept + joule / ms * weightMs;
            timeMs = timeMs * kept + weightMs;
        }
    }

    /**
     * Takes back a gain that did not come about.
     *
     * @param joule energy that was counted and not gained [J]
     */
    public void takeBack(double joule) {
        gainJ -= joule;
    }

    /**
     * The rate.
     *
     * @return net gain over time [J/ms], 0 or more; 0 before anything was gained
     */
    public double jPerMs() {
        return gainJ > 0 ? gainJ / timeMs : 0;
    }
}
