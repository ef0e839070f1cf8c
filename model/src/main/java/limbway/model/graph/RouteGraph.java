package limbway.model.graph;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.geometry.Point;

/**
 * An enclosure as holds and moves, the same for every body.
 *
 * <p>Holds and moves are numbers from 0. Moves are sorted by the hold they start from, so the moves out of hold
 * {@code h} are {@code firstMove(h)} to {@code firstMove(h + 1) - 1}; a second index lists the moves into each hold. What
 * a body can do and at what cost is in {@link MoveCosts}.
 */
public final class RouteGraph {

    private final HoldArrays holds;
    private final MoveArrays moves;
    private final List<Resource> resources;
    private final List<Door> doors;
    private final List<int[]> useHolds;

    private final Set<Point> moved;

    RouteGraph(
            HoldArrays holds,
            MoveArrays moves,
            List<Resource> resources,
            List<Door> doors,
            List<int[]> useHolds,
            Set<Point> moved) {
        this.holds = holds;
        this.moves = moves;
        this.resources = List.copyOf(resources);
        this.doors = List.copyOf(doors);
        this.useHolds = List.copyOf(useHolds);
        this.moved = moved;
    }

    /**
     * Compiles an enclosure.
     *
     * @param enclosure what stands there
     * @param settings how finely, and the widest gap that gets a move
     * @return the graph
     */
    public static RouteGraph compile(Enclosure enclosure, GraphSettings settings) {
        return Compilation.of(new Draft(enclosure, settings), Optional.empty(), true);
    }

    /**
     * Compiles the part of an enclosure round something that was built in.
     *
     * <p>Each move of the enclosure as it is with the new part is a move of this graph or of the one before, or a row of
     * such moves at the same cost; holds that both have lie within a micrometre of each other. That holds as long as what
     * was built in cannot be come to from a panel or by a leap, takes nothing away, and as the part holds everything from
     * which it can be come to.
     *
     * @param part what was built in, and all that it comes within reach of
     * @param whole the enclosure with it, in which something may bar a way
     * @param settings as of the graph before
     * @param before the enclosure compiled as it was
     * @param meetsGround whether what was built in can be come to from the ground, or left to it; on level ground only
     * @return a graph of the part; walks on the ground, over decks and through crowns between holds of the graph before are
     *     left out
     */
    public static RouteGraph compileAround(
            Enclosure part, Enclosure whole, GraphSettings settings, RouteGraph before, boolean meetsGround) {
        return Compilation.of(new Draft(part, whole, settings), Optional.of(before), meetsGround);
    }

    /**
     * Whether the graph of a part has the moves of the whole to the millijoule.
     *
     * <p>It has not where a new place lies within a micrometre of one that is known but not on it, for then one of them is
     * moved to the other, and which it is depends on the order in which they are met; and where there are so many places on
     * the ground that new ones may take known walks away.
     *
     * @param before the graph round which this one was compiled
     * @param meetsGround as it was compiled
     * @return false where only compiling the whole tells
     */
    public boolean isExactAround(RouteGraph before, boolean meetsGround) {
        int onGround = 0;
        for (boolean stands : holds.onGround) {
            onGround += stands ? 1 : 0;
        }
        boolean walksStay = !meetsGround || onGround <= NearbyPlaces.EXACT_PLACES;
        return walksStay && before.moved.containsAll(moved);
    }

    /**
     * Number of holds.
     *
     * @return 0 or more
     */
    public int holdCount() {
        return holds.xM.length;
    }

    /**
     * Number of moves, each direction counted.
     *
     * @return 0 or more
     */
    public int moveCount() {
        return moves.to.length;
    }

    /**
     * Where a hold is.
     *
     * @param hold number of a hold
     * @return its place
     */
    public Point place(int hold) {
        return holds.place(hold);
    }

    /**
     * How high a hold is above the ground straight below it.
     *
     * @param hold number of a hold
     * @return metres, negative below the ground
     */
    public double heightAboveGroundM(int hold) {
        return holds.heightM[hold];
    }

    /**
     * What a hold belongs to.
     *
     * @param hold number of a hold
     * @return id of a support, platform or crown, or {@code ground}
     */
    public String support(int hold) {
        return holds.support[hold];
    }

    /**
     * Whether an animal at a hold stands on the ground.
     *
     * @param hold number of a hold
     * @return true at ground level
     */
    public boolean onGround(int hold) {
        return holds.onGround[hold];
    }

    /**
     * The first move out of a hold.
     *
     * @param hold number of a hold, or the number of holds
     * @return number of a move
     */
    public int firstMove(int hold) {
        return moves.firstFrom[hold];
    }

    /**
     * The first place of a hold in the list of moves into it.
     *
     * @param hold number of a hold, or the number of holds
     * @return index for {@link #moveInto}
     */
    public int firstInto(int hold) {
        return moves.firstInto[hold];
    }

    /**
     * A move into a hold.
     *
     * @param index from {@code firstInto(h)} to {@code firstInto(h + 1) - 1}
     * @return number of a move that ends at {@code h}
     */
    public int moveInto(int index) {
        return moves.into[index];
    }

    /**
     * Where a move starts.
     *
     * @param move number of a move
     * @return number of a hold
     */
    public int from(int move) {
        return moves.from[move];
    }

    /**
     * Where a move ends.
     *
     * @param move number of a move
     * @return number of a hold
     */
    public int to(int move) {
        return moves.to[move];
    }

    /**
     * How a move is made.
     *
     * @param move number of a move
     * @return its locomotor mode
     */
    public LocomotorMode mode(int move) {
        return moves.mode(move);
    }

    /**
     * Whether a move is made on the ground: walked on it, stepped between it and a support, or made between two holds that
     * stand on it.
     *
     * @param move number of a move
     * @return true on the ground
     */
    public boolean moveOnGround(int move) {
        return moves.onGround(move);
    }

    /**
     * Whether a move is made step by step and leads back as well as there. A sway, leap or drop flings the whole body and
     * may lead one way only.
     *
     * @param move number of a move
     * @return false for a sway, leap or drop
     */
    public boolean isStep(int move) {
        return !FlungPrices.covers(mode(move));
    }

    /**
     * Length of a move.
     *
     * @param move number of a move
     * @return metres, above 0
     */
    public double lengthM(int move) {
        return holds.distanceM(moves.from[move], moves.to[move]);
    }

    /**
     * Height gained.
     *
     * @param move number of a move
     * @return metres, negative downwards
     */
    public double riseM(int move) {
        return holds.zM[moves.to[move]] - holds.zM[moves.from[move]];
    }

    /**
     * Clear distance reached, swayed or leaped over, or dropped.
     *
     * @param move number of a move
     * @return metres, 0 where the body stays in contact; of a bipedal walk, how high the hand finds a support
     */
    public double gapM(int move) {
        return moves.gapM[move];
    }

    /**
     * The door that a move passes through.
     *
     * @param move number of a move
     * @return place in {@link #doors()}, or -1 for none
     */
    public int door(int move) {
        return moves.door[move] - 1;
    }

    /**
     * The doors of the enclosure.
     *
     * @return doors in the order of the enclosure
     */
    public List<Door> doors() {
        return doors;
    }

    /**
     * The resources of the enclosure.
     *
     * @return resources in the order of the enclosure
     */
    public List<Resource> resources() {
        return resources;
    }

    /**
     * The number of a resource.
     *
     * @param id name of a resource
     * @return its place in {@link #resources()}
     * @throws IllegalArgumentException if there is none of that name
     */
    public int resourceNumber(String id) {
        for (int i = 0; i < resources.size(); i++) {
            if (resources.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("graph: resource = \"" + id + "\", allowed "
                + resources.stream().map(Resource::id).toList());
    }

    /**
     * The holds from which a resource is used.
     *
     * @param resource place of the resource in {@link #resources()}
     * @return numbers of holds, ascending; empty where nothing is within reach of it
     */
    public int[] useHolds(int resource) {
        return useHolds.get(resource).clone();
    }

    /** Whether a hold is one of a crown, from which an animal clambers to its others. */
    boolean isAmongBranches(int hold) {
        for (int move = firstMove(hold); move < firstMove(hold + 1); move++) {
            boolean within = moves.carriers[moves.firstCarrier[move]].form() == Carrier.Form.BRANCHES
                    && moves.firstCarrier[move] == moves.secondCarrier[move];
            if (within && mode(move) == LocomotorMode.CLAMBER) {
                return true;
            }
        }
        return false;
    }

    /** Whether a hold is a place of the ground, from which an animal walks to others. */
    boolean isWalkedFrom(int hold) {
        for (int move = firstMove(hold); move < firstMove(hold + 1); move++) {
            boolean walk = mode(move) == LocomotorMode.QUADRUPEDAL_WALK && moveOnGround(move);
            if (walk && moves.carriers[moves.firstCarrier[move]].equals(Carrier.SURFACE)) {
                return true;
            }
        }
        return support(hold).equals(GroundWays.NAME);
    }

    HoldArrays holds() {
        return holds;
    }

    MoveArrays moves() {
        return moves;
    }
}
