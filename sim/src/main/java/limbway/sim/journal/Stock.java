package limbway.sim.journal;

/**
 * One food place's account over a run.
 *
 * @param resource number of the resource
 * @param deliveredJ energy put out, what lay there at the start included [J]
 * @param eatenJ energy eaten [J]
 * @param leftJ energy that lies there at the end [J]
 */
public record Stock(int resource, double deliveredJ, double eatenJ, double leftJ) {

    /**
     * What is missing in the account.
     *
     * @return delivered minus eaten minus left [J]; 0 but for rounding
     */
    public double gapJ() {
        return deliveredJ - eatenJ - leftJ;
    }
}
