package limbway.model.containment;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Finds the lines beyond which an animal would be out, from what is drawn; it knows nothing of what stands outside. */
public final class Brinks {

    /** What stands so near to the edge of the ground stands on it [m]. */
    private static final double AT_EDGE_M = 0.3;

    private static final double PIECE_M = 0.5;
    private static final double LEVEL_M = 0.01;
    private static final double JOINED_M = 0.1;
    /** A panel whose normal is flatter than this stands upright. */
    private static final double UPRIGHT = 0.7;

    private final Enclosure enclosure;
    private final List<Segment> edge;
    private final List<Segment> closed = new ArrayList<>();
    private final List<Segment> wet = new ArrayList<>();

    private Brinks(Enclosure enclosure) {
        this.enclosure = enclosure;
        this.edge = pieces(enclosure.ground().outline(), 0);
        for (Barrier barrier : enclosure.bounds().barriers()) {
            (barrier.kind() == BarrierKind.WATER ? wet : closed).addAll(pieces(barrier.footprint(), 0));
        }
        for (Panel panel : enclosure.panels()) {
            if (isUpright(panel)) {
                panel.facet().edges().forEach(side -> closed.add(inPlan(side)));
            }
        }
    }

    /**
     * The lines of an enclosure.
     *
     * @param enclosure what stands there
     * @return barriers, then panels, then the edge of the ground; those without a line are left out
     */
    public static List<Brink> of(Enclosure enclosure) {
        Brinks brinks = new Brinks(enclosure);
        List<Brink> found = new ArrayList<>();
        for (Barrier barrier : enclosure.bounds().barriers()) {
            found.add(barrier.kind() == BarrierKind.WATER ? brinks.farBank(barrier) : top(barrier));
        }
        enclosure.panels().forEach(panel -> found.add(brinks.freeTop(panel)));
        List<Segment> open = brinks.edge.stream()
                .filter(piece -> !near(middle(piece), brinks.closed) && !near(middle(piece), brinks.wet))
                .toList();
        found.add(new Brink(
                "edge of the ground",
                "the edge of the ground, where nothing is drawn that stops an animal,",
                open,
                true,
                List.of(),
                false));
        return found.stream().filter(brink -> !brink.pieces().isEmpty()).toList();
    }

    private static Brink top(Barrier barrier) {
        return new Brink(
                barrier.id(),
                "the top of the " + barrier.kind().word() + " " + barrier.id(),
                pieces(barrier.footprint(), barrier.topZM()),
                false,
                List.of(),
                true);
    }

    /**
     * The bank that lies on the edge of the ground or beyond; a pond within has none. The short ends, where the near bank
     * runs into the far one, are left out.
     */
    private Brink farBank(Barrier water) {
        List<Segment> near = new ArrayList<>();
        List<Segment> far = new ArrayList<>();
        for (Segment side : sides(water.footprint(), water.topZM())) {
            (isOutside(middle(side)) ? far : near).add(side);
        }
        List<Segment> opposite = far.stream()
                .filter(side -> near.stream().noneMatch(bank -> meet(side, bank)))
                .toList();
        List<Segment> open = (opposite.isEmpty() ? far : opposite)
                .stream()
                        .flatMap(side -> split(side).stream())
                        .filter(piece -> !near(inPlan(middle(piece)), closed))
                        .toList();
        return new Brink(water.id(), "the far bank of the water " + water.id(), open, false, near, false);
    }

    private boolean isOutside(Point place) {
        return !enclosure.ground().outline().covers(place.xM(), place.yM()) || near(inPlan(place), edge);
    }

    private static boolean meet(Segment one, Segment other) {
        return one.a().equals(other.b()) || one.b().equals(other.a());
    }

    /** The top edge of an upright panel on the edge of the ground, where no other panel joins it. */
    private Brink freeTop(Panel panel) {
        List<Segment> free = new ArrayList<>();
        double topM = panel.corners().stream().mapToDouble(Point::zM).max().orElseThrow();
        boolean onEdge = isUpright(panel) && panel.corners().stream().allMatch(this::isOutside);
        for (Segment side : panel.facet().edges()) {
            boolean atTop = onEdge && Math.min(side.a().zM(), side.b().zM()) > topM - LEVEL_M;
            if (atTop && !isJoined(side, panel)) {
                free.addAll(split(side));
            }
        }
        return new Brink(
                panel.id(),
                "the free top of the " + panel.kind().word() + " " + panel.id(),
                free,
                false,
                List.of(),
                true);
    }

    private boolean isJoined(Segment side, Panel panel) {
        return enclosure.panels().stream()
                .filter(other -> !other.id().equals(panel.id()))
                .flatMap(other -> other.facet().edges().stream())
                .anyMatch(other -> other.distanceM(middle(side)) < JOINED_M);
    }

    private static boolean isUpright(Panel panel) {
        return Math.abs(panel.facet().normal().zM()) < UPRIGHT;
    }

    private static boolean near(Point place, List<Segment> lines) {
        return lines.stream().anyMatch(line -> line.distanceM(place) <= AT_EDGE_M);
    }

    private static List<Segment> pieces(Outline outline, double zM) {
        return sides(outline, zM).stream().flatMap(side -> split(side).stream()).toList();
    }

    private static List<Segment> sides(Outline outline, double zM) {
        List<Segment> all = new ArrayList<>();
        List<Corner> corners = outline.corners();
        for (int i = 0; i < corners.size(); i++) {
            all.add(new Segment(
                    corners.get(i).atHeight(zM),
                    corners.get((i + 1) % corners.size()).atHeight(zM)));
        }
        return all;
    }

    private static List<Segment> split(Segment line) {
        int count = (int) Math.max(1, Math.ceil(line.lengthM() / PIECE_M));
        List<Segment> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(new Segment(line.at((double) i / count), line.at((i + 1.0) / count)));
        }
        return all;
    }

    private static Point middle(Segment piece) {
        return piece.at(1.0 / 2);
    }

    private static Point inPlan(Point place) {
        return place.atHeight(0);
    }

    private static Segment inPlan(Segment line) {
        return new Segment(inPlan(line.a()), inPlan(line.b()));
    }
}
