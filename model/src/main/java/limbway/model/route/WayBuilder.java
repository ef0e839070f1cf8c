package limbway.model.route;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/** Walks along trees and adds up what the way costs. */
final class WayBuilder {

    private final RouteGraph graph;
    private final MoveCosts costs;
    private final List<Integer> holds = new ArrayList<>();
    private final List<Integer> moves = new ArrayList<>();
    private final long[] milliJByMode = new long[LocomotorMode.values().length];
    private long offGroundMilliJ;
    private double lengthM;
    private double offGroundM;
    private double seconds;
    private double offGroundSeconds;
    private int at;

    WayBuilder(RouteGraph graph, MoveCosts costs, int start) {
        this.graph = graph;
        this.costs = costs;
        this.at = start;
        holds.add(start);
    }

    int at() {
        return at;
    }

    void make(int move) {
        LocomotorMode mode = graph.mode(move);
        int milliJ = costs.milliJ(move);
        double moveM = graph.lengthM(move);
        double moveSeconds = costs.seconds(move);
        milliJByMode[mode.ordinal()] += milliJ;
        lengthM += moveM;
        seconds += moveSeconds;
        if (!graph.moveOnGround(move)) {
            offGroundMilliJ += milliJ;
            offGroundM += moveM;
            offGroundSeconds += moveSeconds;
        }
        at = graph.to(move);
        holds.add(at);
        moves.add(move);
    }

    void follow(ReverseTree tree) {
        while (tree.nextMove(at) != ReverseTree.NO_MOVE) {
            make(tree.nextMove(at));
        }
    }

    Way build() {
        return new Way(
                holds,
                moves,
                EnergyByPart.of(milliJByMode),
                offGroundMilliJ,
                lengthM,
                offGroundM,
                seconds,
                offGroundSeconds);
    }
}
