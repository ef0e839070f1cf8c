package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.enclosure.SupportScale;
import limbway.model.geometry.Point;

/** Makes candidates along all supports and over all platforms at a spacing. */
public final class CandidatePlaces {

    private static final double CENTI = 100;

    /** So far from the edge of a deck, so that what is put there stands firm: assumption [m]. */
    private static final double FROM_EDGE_M = 0.1;

    private static final Set<SupportKind> FIRM = Set.of(SupportKind.POLE, SupportKind.TRUNK, SupportKind.BEAM);

    private CandidatePlaces() {}

    /**
     * Candidates on all that animals climb.
     *
     * @param enclosure what stands there
     * @param spacingM distance between them [m], 0.1 or more; rounded to centimetres, as a scenario would say them
     * @return in the order of the enclosure: along supports from the first end, which is left out, to the other; on
     *     platforms the middle, then a grid round it
     */
    public static List<CandidatePlace> along(Enclosure enclosure, double spacingM) {
        List<CandidatePlace> all = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            SupportScale scale = new SupportScale(support, enclosure.ground().terrain());
            for (int step = 1; isBeforeEnd(scale, rounded(step * spacingM)); step++) {
                double measureM = rounded(step * spacingM);
                if (isBeyondStart(scale, measureM)) {
                    all.add(new CandidatePlace(
                            support.id() + " at " + text(measureM), scale.at(measureM), support.id()));
                }
            }
        }
        for (Platform platform : enclosure.platforms()) {
            over(platform, spacingM, all);
        }
        return List.copyOf(all);
    }

    /**
     * Candidates for decks: on what stands firm, which are poles, trunks and beams.
     *
     * @param enclosure what stands there
     * @param spacingM distance between them [m], 0.1 or more
     * @return in the order of the enclosure
     */
    public static List<CandidatePlace> firm(Enclosure enclosure, double spacingM) {
        Set<String> firm = enclosure.supports().stream()
                .filter(support -> FIRM.contains(support.kind()))
                .map(Support::id)
                .collect(Collectors.toSet());
        return along(enclosure, spacingM).stream()
                .filter(candidate -> firm.contains(candidate.on()))
                .toList();
    }

    private static boolean isBeyondStart(SupportScale scale, double measureM) {
        Support support = scale.support();
        return !support.kind().isUpright()
                || scale.levelM(measureM) > support.axis().start().zM();
    }

    private static boolean isBeforeEnd(SupportScale scale, double measureM) {
        Support support = scale.support();
        return support.kind().isUpright()
                ? scale.levelM(measureM) < support.axis().end().zM()
                : measureM < support.axis().lengthM();
    }

    private static void over(Platform platform, double spacingM, List<CandidatePlace> all) {
        Point middle = platform.centre();
        all.add(new CandidatePlace(platform.id(), middle, platform.id()));
        double reachM = platform.outline().corners().stream()
                .mapToDouble(corner -> corner.atHeight(platform.zM()).distanceM(middle))
                .max()
                .orElse(0);
        int steps = (int) Math.floor(reachM / spacingM);
        for (int north = -steps; north <= steps; north++) {
            for (int east = -steps; east <= steps; east++) {
                double eastM = rounded(east * spacingM);
                double northM = rounded(north * spacingM);
                Point at = middle.plus(new Point(eastM, northM, 0));
                boolean isMiddle = east == 0 && north == 0;
                if (!isMiddle && stands(platform, at)) {
                    all.add(new CandidatePlace(
                            platform.id() + " at [" + text(eastM) + ", " + text(northM) + "]", at, platform.id()));
                }
            }
        }
    }

    private static boolean stands(Platform platform, Point at) {
        return platform.outline().covers(at.xM(), at.yM())
                && platform.edges().stream().allMatch(edge -> edge.distanceM(at) >= FROM_EDGE_M);
    }

    private static double rounded(double metres) {
        return Math.round(metres * CENTI) / CENTI;
    }

    /** A number that reads back as itself. */
    private static String text(double metres) {
        String text = Double.toString(metres);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
