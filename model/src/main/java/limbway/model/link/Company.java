package limbway.model.link;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.GraphSettings;

/**
 * What a support within reach of a link needs beside it so that new holds on it get the moves that compiling gives them:
 * the supports that go on with it in one line, which are divided as one, and the rails on which a hand lies while the feet
 * walk along it.
 */
final class Company {

    private static final double SAME_PLACE_M = 1e-6;

    /** Cosine of the angle within which two lines may be one, wider than compiling has it. */
    private static final double IN_LINE_COSINE = 1 - 1e-9;

    /** What is walked on two feet is less steep than this, as compiling has it, and a little [°]. */
    private static final double WALKED_DEG = 20.01;

    private final Support link;
    private final List<Support> all;
    private final double handM;
    private final double reachM;

    Company(GraphSettings settings, Support link, List<Support> all) {
        this.link = link;
        this.all = all;
        this.handM = settings.bodies().stream()
                        .mapToDouble(Body::overheadReachM)
                        .max()
                        .orElse(0)
                + SAME_PLACE_M;
        this.reachM = settings.widestGapM();
    }

    /** The company of supports that are near. */
    Set<Support> of(List<Support> near) {
        Set<Support> lines = new LinkedHashSet<>(near);
        boolean more = true;
        while (more) {
            List<Support> on =
                    all.stream().filter(other -> goesOnFromOneOf(other, lines)).toList();
            more = lines.addAll(on);
        }
        Set<Support> company = new LinkedHashSet<>(lines);
        for (Support rail : all) {
            if (!lines.contains(rail) && isRail(rail, lines)) {
                company.add(rail);
            }
        }
        return company;
    }

    private static boolean goesOnFromOneOf(Support other, Set<Support> lines) {
        return lines.stream().anyMatch(line -> other.kind() == line.kind() && goesOn(line, other));
    }

    private static boolean goesOn(Support one, Support other) {
        for (Segment a : ends(one)) {
            for (Segment b : ends(other)) {
                boolean meet = a.a().distanceM(b.a()) <= 2 * SAME_PLACE_M;
                if (meet && -cosine(a, b) >= IN_LINE_COSINE) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The first and the last piece, each from the end of the support inwards. */
    private static List<Segment> ends(Support support) {
        List<Segment> pieces = support.axis().pieces();
        Segment last = pieces.get(pieces.size() - 1);
        return List.of(pieces.get(0), new Segment(last.b(), last.a()));
    }

    private static double cosine(Segment a, Segment b) {
        Point u = a.b().minus(a.a());
        Point v = b.b().minus(b.a());
        return u.dot(v) / (u.lengthM() * v.lengthM());
    }

    /** Near enough to a walked line, there where the link may give that new holds. */
    private boolean isRail(Support rail, Set<Support> lines) {
        double farthestM = 0;
        for (Support line : lines) {
            farthestM = Math.max(farthestM, reachM + (link.diameterM() + line.diameterM()) / 2 + handM);
        }
        double limitM = farthestM;
        return isWithin(rail, link.axis().pieces(), limitM)
                && lines.stream().anyMatch(line -> isWithin(rail, walked(line), handM));
    }

    private static List<Segment> walked(Support line) {
        return line.axis().pieces().stream()
                .filter(piece -> Math.abs(piece.b().zM() - piece.a().zM())
                        <= StrictMath.sin(StrictMath.toRadians(WALKED_DEG)) * piece.lengthM())
                .toList();
    }

    private static boolean isWithin(Support support, List<Segment> pieces, double limitM) {
        for (Segment piece : pieces) {
            for (Segment line : support.axis().pieces()) {
                if (ClosestApproach.of(piece, line).distanceM() <= limitM) {
                    return true;
                }
            }
        }
        return false;
    }
}
