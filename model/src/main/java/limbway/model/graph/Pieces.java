package limbway.model.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Cuts supports into straight pieces and joins those that continue each other. */
final class Pieces {

    /** Two ends closer than this are one. */
    static final double SAME_PLACE_M = 1e-6;

    private static final double SAME_DIRECTION = 1e-9;

    private static final double TAPER_STEP_M = 0.5;

    private final List<Piece> raw = new ArrayList<>();
    private final Map<String, List<Integer>> endsAt = new LinkedHashMap<>();
    private boolean[] used;

    private Pieces() {}

    static List<Piece> of(List<Support> supports) {
        return new Pieces().join(supports);
    }

    private List<Piece> join(List<Support> supports) {
        for (Support support : supports) {
            double alongM = 0;
            for (Segment line : support.axis().pieces()) {
                if (line.lengthM() > SAME_PLACE_M) {
                    cut(support, line, alongM);
                }
                alongM += line.lengthM();
            }
        }
        used = new boolean[raw.size()];
        List<Piece> joined = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            if (!used[i]) {
                used[i] = true;
                Piece forward = extend(raw.get(i));
                joined.add(extend(reversed(forward)));
            }
        }
        return joined;
    }

    /** A tapering line is cut into lengths of nearly one thickness. */
    private void cut(Support support, Segment line, double alongM) {
        boolean tapers = support.tipDiameterM() < support.diameterM();
        int parts = tapers ? (int) Math.ceil(line.lengthM() / TAPER_STEP_M) : 1;
        for (int i = 0; i < parts; i++) {
            Segment part =
                    parts == 1 ? line : new Segment(line.at((double) i / parts), line.at((double) (i + 1) / parts));
            remember(part.a(), raw.size());
            remember(part.b(), raw.size());
            raw.add(Piece.of(part, support, alongM + i * line.lengthM() / parts));
        }
    }

    /** Appends pieces at the far end as long as one continues the line. */
    private Piece extend(Piece start) {
        Piece line = start;
        while (true) {
            Piece next = continuation(line);
            if (next == null) {
                return line;
            }
            line = appended(line, next);
        }
    }

    private Piece continuation(Piece line) {
        for (int candidate : endsAt.getOrDefault(key(line.line().b()), List.of())) {
            if (used[candidate]) {
                continue;
            }
            Piece other = raw.get(candidate);
            Piece onward = key(other.line().a()).equals(key(line.line().b())) ? other : reversed(other);
            if (sameStock(line, onward) && sameDirection(line.line(), onward.line())) {
                used[candidate] = true;
                return onward;
            }
        }
        return null;
    }

    private static boolean sameStock(Piece one, Piece other) {
        return one.stock().kind() == other.stock().kind()
                && one.stock().material() == other.stock().material()
                && one.diameterM() == other.diameterM()
                && one.stock().bearing().equals(other.stock().bearing());
    }

    private static boolean sameDirection(Segment one, Segment other) {
        Point u = unit(one);
        Point v = unit(other);
        return u.minus(v).lengthM() < SAME_DIRECTION;
    }

    private static Point unit(Segment line) {
        return line.b().minus(line.a()).times(1 / line.lengthM());
    }

    private static Piece appended(Piece first, Piece second) {
        double firstM = first.line().lengthM();
        double totalM = firstM + second.line().lengthM();
        List<String> names = new ArrayList<>(first.names());
        names.addAll(second.names());
        List<Double> until = new ArrayList<>();
        for (double share : first.untilShare()) {
            until.add(share * firstM / totalM);
        }
        for (double share : second.untilShare()) {
            until.add(share == 1 ? 1 : (firstM + share * (totalM - firstM)) / totalM);
        }
        boolean oneSupport = first.stock().id().equals(second.stock().id());
        return new Piece(
                new Segment(first.line().a(), second.line().b()),
                first.stock(),
                first.diameterM(),
                oneSupport
                        ? new Course(
                                first.course().memberM(),
                                first.course().startM(),
                                second.course().endM())
                        : first.course().joinedBy(second.course()),
                names,
                until);
    }

    private static Piece reversed(Piece piece) {
        List<String> names = new ArrayList<>();
        List<Double> until = new ArrayList<>();
        for (int i = piece.names().size() - 1; i >= 0; i--) {
            names.add(piece.names().get(i));
            until.add(i == 0 ? 1 : 1 - piece.untilShare().get(i - 1));
        }
        return new Piece(
                new Segment(piece.line().b(), piece.line().a()),
                piece.stock(),
                piece.diameterM(),
                piece.course().reversed(),
                names,
                until);
    }

    private void remember(Point end, int piece) {
        endsAt.computeIfAbsent(key(end), k -> new ArrayList<>()).add(piece);
    }

    private static String key(Point p) {
        return Math.round(p.xM() / SAME_PLACE_M) + "," + Math.round(p.yM() / SAME_PLACE_M) + ","
                + Math.round(p.zM() / SAME_PLACE_M);
    }
}
