package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Triangle;

/** Takes an enclosure apart into what casts shade. */
final class Casters {

    private static final Point UP = new Point(0, 0, 1);

    private final ShadeSettings settings;
    private final List<Crown> crowns = new ArrayList<>();
    private final LeafStates states;
    private final List<Caster> all = new ArrayList<>();

    Casters(Enclosure enclosure, ShadeSettings settings) {
        this.settings = settings;
        crowns.addAll(enclosure.crowns());
        crowns.addAll(enclosure.shading().neighbours());
        states = new LeafStates(crowns);
        enclosure.shading().covers().forEach(this::add);
        enclosure.platforms().forEach(this::add);
        enclosure.panels().forEach(this::add);
        enclosure.bounds().barriers().forEach(this::add);
        enclosure.shading().buildings().forEach(this::add);
        for (int crown = 0; crown < crowns.size(); crown++) {
            all.add(new Leaves(crowns.get(crown), extinctionPerM(crown)));
        }
        for (Triangle land : enclosure.ground().terrain().triangles()) {
            all.add(sheet(new Facet(List.of(land.a(), land.b(), land.c())), 0));
        }
        double farthestM = span(enclosure);
        enclosure.supports().forEach(support -> add(support, farthestM));
    }

    List<Caster> all() {
        return all;
    }

    LeafStates states() {
        return states;
    }

    private double[] extinctionPerM(int number) {
        Crown crown = crowns.get(number);
        double inLeaf = settings.leafProjection() * crown.foliage().leafAreaIndex() / (crown.topZM() - crown.baseZM());
        double[] extinction = new double[states.count()];
        for (int state = 0; state < extinction.length; state++) {
            extinction[state] = states.isInLeaf(state, number) ? inLeaf : inLeaf * settings.bareShare();
        }
        return extinction;
    }

    private void add(Cover cover) {
        all.add(sheet(cover.facet(), cover.transmittance()));
    }

    private void add(Platform platform) {
        double through = platform.kind() == PlatformKind.HAMMOCK ? settings.hammock() : 0;
        all.add(Sheet.of(lifted(platform.outline(), platform.zM()), UP, through));
    }

    private void add(Panel panel) {
        double strandShare = panel.strandDiameterM() / (panel.openingM() + panel.strandDiameterM());
        all.add(Sheet.mesh(panel.facet().corners(), panel.facet().normal(), strandShare));
    }

    private void add(Barrier barrier) {
        if (barrier.kind() != BarrierKind.WATER) {
            // light goes in at one face of a pane and out at another
            double face = barrier.kind() == BarrierKind.GLASS ? Math.sqrt(settings.glass()) : 0;
            addPrism(barrier.footprint(), barrier.baseZM(), barrier.topZM(), face);
        }
    }

    private void add(Building building) {
        addPrism(building.footprint(), building.baseZM(), building.topZM(), 0);
    }

    private void addPrism(Outline footprint, double baseZM, double topZM, double face) {
        all.add(Sheet.of(lifted(footprint, topZM), UP, face));
        all.add(Sheet.of(lifted(footprint, baseZM), UP, face));
        List<Corner> corners = footprint.corners();
        for (int i = 0; i < corners.size(); i++) {
            Corner from = corners.get(i);
            Corner to = corners.get((i + 1) % corners.size());
            all.add(sheet(
                    new Facet(List.of(
                            from.atHeight(baseZM), to.atHeight(baseZM), to.atHeight(topZM), from.atHeight(topZM))),
                    face));
        }
    }

    private void add(Support support, double farthestM) {
        List<Point> points = support.axis().points();
        double alongM = 0;
        for (int i = 1; i < points.size(); i++) {
            double toM = alongM + points.get(i).distanceM(points.get(i - 1));
            if (toM > alongM) {
                all.add(new Member(
                        points.get(i - 1),
                        points.get(i),
                        support.diameterAtM(alongM) / 2,
                        support.diameterAtM(toM) / 2,
                        i > 1,
                        i + 1 < points.size(),
                        farthestM));
            }
            alongM = toM;
        }
    }

    private static Sheet sheet(Facet facet, double transmittance) {
        return Sheet.of(facet.corners(), facet.normal(), transmittance);
    }

    private static List<Point> lifted(Outline outline, double zM) {
        return outline.corners().stream().map(corner -> corner.atHeight(zM)).toList();
    }

    /** The longest line that fits into the enclosure, on the safe side. */
    private static double span(Enclosure enclosure) {
        List<Point> points = new ArrayList<>(lifted(enclosure.ground().outline(), 0));
        enclosure.supports().forEach(support -> points.addAll(support.axis().points()));
        enclosure.platforms().forEach(platform -> points.addAll(lifted(platform.outline(), platform.zM())));
        double[] box = Boxes.around(points, 0);
        return new Point(box[0], box[1], box[2]).distanceM(new Point(box[3], box[4], box[5]));
    }
}
