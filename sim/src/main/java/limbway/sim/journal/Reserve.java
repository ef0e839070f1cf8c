package limbway.sim.journal;

/**
 * One animal's energy account over a run; what came in less what was spent is the change of the reserve.
 *
 * @param animal number of the animal in the study
 * @param startJ reserve at the start [J], relative to being full
 * @param eatenJ energy eaten [J]
 * @param movedJ energy spent on moves [J]
 * @param restingJ energy spent by the second whatever the animal does [J]
 * @param otherJ energy spent while awake on all that is not moving about [J]
 * @param endJ reserve at the end [J]
 */
public record Reserve(
        int animal, double startJ, double eatenJ, double movedJ, double restingJ, double otherJ, double endJ) {

    /**
     * What is missing in the account.
     *
     * @return end minus (start plus eaten minus moved minus resting minus other) [J]; 0 but for rounding
     */
    public double gapJ() {
        return endJ - (startJ + eatenJ - movedJ - restingJ - otherJ);
    }
}
