package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/**
 * Where the waking time of all animals is spent: on which support, or in which cell of the ground.
 *
 * <p>A stay counts where it is made. A move off the ground counts for what it leads to; a move on the ground for the
 * cells below it, each by the share of the move that lies in it.
 *
 * @param supports everything that somebody was on, longest first
 * @param ground the cells of the ground
 */
public record UseOfPlaces(List<SupportUse> supports, GroundCells ground) {

    /** What the holds of the ground are said to be on. */
    private static final String GROUND = "ground";

    /** Keeps a copy of the list. */
    public UseOfPlaces {
        supports = List.copyOf(supports);
    }

    /**
     * Adds up all repetitions.
     *
     * @param outcome a run with at least one finished replication
     * @return times of an animal in a day
     */
    public static UseOfPlaces of(Outcome outcome) {
        Tally tally = new Tally(outcome);
        outcome.journals().forEach(tally::add);
        return tally.use();
    }

    private static final class Tally {

        private final Outcome outcome;
        private final RouteGraph graph;
        private final Map<String, Double> supports = new LinkedHashMap<>();

        /** Seconds by cell, rows from south to north, each from west to east. */
        private final TreeMap<Long, Double> cells = new TreeMap<>();

        Tally(Outcome outcome) {
            this.outcome = outcome;
            this.graph = outcome.habitat().graph();
        }

        void add(Journal journal) {
            for (Stay stay : journal.stays()) {
                if (stay.motive() != Motive.NIGHT) {
                    double seconds = (stay.endMs() - stay.startMs()) / 1000.0;
                    if (graph.onGround(stay.hold())) {
                        cell(graph.place(stay.hold()), seconds);
                    } else {
                        supports.merge(graph.support(stay.hold()), seconds, Double::sum);
                    }
                }
            }
            for (Trip trip : journal.trips()) {
                MoveCosts costs = outcome.habitat()
                        .routes(outcome.habitat().animals().get(trip.animal()).body())
                        .costs();
                for (int move : trip.way().moves()) {
                    move(move, costs.seconds(move));
                }
            }
        }

        private void move(int move, double seconds) {
            String leadsTo = graph.support(graph.to(move));
            if (graph.moveOnGround(move) || leadsTo.equals(GROUND)) {
                along(graph.place(graph.from(move)), graph.place(graph.to(move)), seconds);
            } else {
                supports.merge(leadsTo, seconds, Double::sum);
            }
        }

        /** Divides the seconds of a straight move among the cells that it crosses. */
        private void along(Point from, Point to, double seconds) {
            List<Double> cuts = new ArrayList<>(List.of(0.0, 1.0));
            cuts(cuts, from.xM(), to.xM());
            cuts(cuts, from.yM(), to.yM());
            cuts.sort(null);
            for (int i = 1; i < cuts.size(); i++) {
                double share = cuts.get(i) - cuts.get(i - 1);
                if (share > 0) {
                    double middle = (cuts.get(i) + cuts.get(i - 1)) / 2;
                    cell(from.plus(to.minus(from).times(middle)), seconds * share);
                }
            }
        }

        private static void cuts(List<Double> cuts, double fromM, double toM) {
            double low = Math.min(fromM, toM);
            double high = Math.max(fromM, toM);
            for (double edge = Math.floor(low) + 1; edge < high; edge++) {
                cuts.add((edge - fromM) / (toM - fromM));
            }
        }

        private void cell(Point at, double seconds) {
            int x = (int) Math.floor(at.xM());
            int y = (int) Math.floor(at.yM());
            cells.merge(((long) y << Integer.SIZE) + x, seconds, Double::sum);
        }

        UseOfPlaces use() {
            double animalDays = (double) outcome.journals().size()
                    * outcome.settings().days()
                    * outcome.habitat().animals().size();
            List<SupportUse> used = new ArrayList<>();
            supports.forEach((id, seconds) -> used.add(new SupportUse(id, seconds / animalDays)));
            used.sort((a, b) -> {
                int longer = Double.compare(b.secondsPerAnimalDay(), a.secondsPerAnimalDay());
                return longer != 0 ? longer : a.id().compareTo(b.id());
            });
            return new UseOfPlaces(used, ground(animalDays));
        }

        private GroundCells ground(double animalDays) {
            int west = Integer.MAX_VALUE;
            int east = Integer.MIN_VALUE;
            int south = Integer.MAX_VALUE;
            int north = Integer.MIN_VALUE;
            for (long cell : cells.keySet()) {
                west = Math.min(west, x(cell));
                east = Math.max(east, x(cell));
                south = Math.min(south, y(cell));
                north = Math.max(north, y(cell));
            }
            if (cells.isEmpty()) {
                return new GroundCells(0, 0, 0, 0, new double[0]);
            }
            int columns = east - west + 1;
            int rows = north - south + 1;
            double[] seconds = new double[columns * rows];
            for (Map.Entry<Long, Double> entry : cells.entrySet()) {
                seconds[(y(entry.getKey()) - south) * columns + x(entry.getKey()) - west] =
                        entry.getValue() / animalDays;
            }
            return new GroundCells(west, south, columns, rows, seconds);
        }

        private static int x(long cell) {
            return (int) cell;
        }

        private static int y(long cell) {
            return (int) ((cell - x(cell)) >> Integer.SIZE);
        }
    }
}
