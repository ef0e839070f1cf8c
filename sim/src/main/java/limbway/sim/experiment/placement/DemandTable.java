package limbway.sim.experiment.placement;

import java.util.Arrays;

/**
 * What it costs to serve each demand from each candidate, in flat arrays.
 *
 * <p>A demand is served from the chosen candidate with the least cost, the lower number among equals; a choice is judged by the
 * sum of a part over the sum of a whole, both as they are where the demands are served. With the cost as the part and a whole
 * of one in all this is the p-median problem.
 *
 * @source Hakimi 1964, Oper. Res. 12:450-459, doi 10.1287/opre.12.3.450, for the p-median (from memory)
 */
public final class DemandTable {

    final int demands;
    final int candidates;

    /* candidate after candidate, the demands of one side by side */
    final double[] cost;
    final double[] part;
    final double[] whole;

    /* what serves a demand already, before anything is chosen; infinite cost where nothing does */
    final double[] standingCost;
    final double[] standingPart;
    final double[] standingWhole;

    /**
     * An empty table in which nothing serves any demand.
     *
     * @param demands number of demands, 1 or more
     * @param candidates number of candidates, 1 or more
     */
    public DemandTable(int demands, int candidates) {
        this.demands = demands;
        this.candidates = candidates;
        cost = new double[demands * candidates];
        part = new double[cost.length];
        whole = new double[cost.length];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        standingCost = new double[demands];
        standingPart = new double[demands];
        standingWhole = new double[demands];
        Arrays.fill(standingCost, Double.POSITIVE_INFINITY);
    }

    /**
     * The p-median problem.
     *
     * @param cost cost of serving each demand from each candidate, {@code demands × candidates}
     * @return a table whose scores are the sums of least costs
     */
    public static DemandTable median(double[][] cost) {
        DemandTable table = new DemandTable(cost.length, cost[0].length);
        for (int d = 0; d < cost.length; d++) {
            for (int c = 0; c < cost[d].length; c++) {
                table.set(d, c, cost[d][c], cost[d][c], d == 0 ? 1 : 0);
            }
        }
        return table;
    }

    /**
     * Says what it costs to serve a demand from a candidate.
     *
     * @param demand number of the demand
     * @param candidate number of the candidate
     * @param costs what decides where it is served, 0 or more
     * @param ofPart what is added to the part
     * @param ofWhole what is added to the whole
     */
    public void set(int demand, int candidate, double costs, double ofPart, double ofWhole) {
        int at = candidate * demands + demand;
        cost[at] = costs;
        part[at] = ofPart;
        whole[at] = ofWhole;
    }

    /**
     * Says what serves a demand if no candidate does it for less.
     *
     * @param demand number of the demand
     * @param costs what decides where it is served, 0 or more
     * @param ofPart what is added to the part
     * @param ofWhole what is added to the whole
     */
    public void setStanding(int demand, double costs, double ofPart, double ofWhole) {
        standingCost[demand] = costs;
        standingPart[demand] = ofPart;
        standingWhole[demand] = ofWhole;
    }

    /**
     * Number of candidates.
     *
     * @return 1 or more
     */
    public int candidates() {
        return candidates;
    }

    /**
     * Number of demands.
     *
     * @return 1 or more
     */
    public int demands() {
        return demands;
    }

    /**
     * Which of the chosen serves a demand.
     *
     * @param demand number of the demand
     * @param chosen numbers of candidates, rising
     * @return place among the chosen, or -1 if what stands there serves it for less
     */
    public int server(int demand, int... chosen) {
        double least = standingCost[demand];
        int server = -1;
        for (int i = 0; i < chosen.length; i++) {
            if (cost[chosen[i] * demands + demand] < least) {
                least = cost[chosen[i] * demands + demand];
                server = i;
            }
        }
        return server;
    }

    /**
     * Judges a choice.
     *
     * @param chosen numbers of candidates, rising
     * @return part over whole, less is better; infinite if a demand is not served
     */
    public double score(int... chosen) {
        double parts = 0;
        double wholes = 0;
        for (int d = 0; d < demands; d++) {
            int server = server(d, chosen);
            if (server < 0 && standingCost[d] == Double.POSITIVE_INFINITY) {
                return Double.POSITIVE_INFINITY;
            }
            parts += server < 0 ? standingPart[d] : part[chosen[server] * demands + d];
            wholes += server < 0 ? standingWhole[d] : whole[chosen[server] * demands + d];
        }
        return wholes > 0 ? parts / wholes : 0;
    }
}
