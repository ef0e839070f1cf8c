package limbway.model.shade;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;

/** Judges layouts whose only shade is that of covers with convex shapes, by rays against planes, one after the other. */
final class FlatJudge implements RoofJudge {

    private static final int ACROSS = 4;

    private final Enclosure enclosure;
    private final ShadeRule rule;
    private final ShadeCalendar calendar;
    private final List<SunPosition> suns = new ArrayList<>();

    FlatJudge(Enclosure enclosure, ShadeRule rule, ShadeCalendar calendar) {
        this.enclosure = enclosure;
        this.rule = rule;
        this.calendar = calendar;
        for (int day = 0; day < calendar.days(); day++) {
            for (int slot = 0; slot < calendar.slots(); slot++) {
                suns.add(SunPosition.at(enclosure.site(), calendar.moment(day, slot)));
            }
        }
    }

    @Override
    public List<List<Point>> points() {
        return enclosure.platforms().stream().map(FlatJudge::grid).toList();
    }

    private static List<Point> grid(Platform deck) {
        List<Corner> corners = deck.outline().corners();
        Point origin = corners.get(0).atHeight(deck.zM());
        Point along = corners.get(1).atHeight(deck.zM()).minus(origin);
        Point across = corners.get(3).atHeight(deck.zM()).minus(origin);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ACROSS; i++) {
            for (int j = 0; j < ACROSS; j++) {
                points.add(origin.plus(along.times((i + 0.5) / ACROSS)).plus(across.times((j + 0.5) / ACROSS)));
            }
        }
        return points;
    }

    @Override
    public boolean isLit(Point point, Point towardsSun, MonthDay day) {
        return isLit(enclosure, point, towardsSun);
    }

    private static boolean isLit(Enclosure layout, Point point, Point towardsSun) {
        return layout.shading().covers().stream().noneMatch(cover -> hits(cover, point, towardsSun));
    }

    private static boolean hits(Cover cover, Point from, Point towards) {
        List<Point> corners = cover.facet().corners();
        Point normal = cover.facet().normal();
        double share = normal.dot(corners.get(0).minus(from)) / normal.dot(towards);
        if (!(share > 0)) {
            return false;
        }
        Point at = from.plus(towards.times(share));
        for (int i = 0; i < corners.size(); i++) {
            Point side = corners.get((i + 1) % corners.size()).minus(corners.get(i));
            Point in = at.minus(corners.get(i));
            Point cross = new Point(
                    side.yM() * in.zM() - side.zM() * in.yM(),
                    side.zM() * in.xM() - side.xM() * in.zM(),
                    side.xM() * in.yM() - side.yM() * in.xM());
            if (normal.dot(cross) < 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public ShadeYear audit(Enclosure mended) {
        int moments = calendar.days() * calendar.slots();
        List<List<Point>> points = points();
        BitSet up = new BitSet(moments);
        List<BitSet> shaded = points.stream().map(any -> new BitSet(moments)).toList();
        for (int number = 0; number < suns.size(); number++) {
            if (suns.get(number).altitudeDeg() >= rule.lowestSunDeg()) {
                up.set(number);
                Point towards = suns.get(number).direction();
                for (int deck = 0; deck < points.size(); deck++) {
                    shaded.get(deck).set(number, isShaded(mended, points.get(deck), towards));
                }
            }
        }
        List<String> names = enclosure.platforms().stream().map(Platform::id).toList();
        return new ShadeYear(calendar, rule, names, up, shaded);
    }

    /** Whether the rule is kept at every moment of a list, given by their numbers; stops at the first breach. */
    boolean keepsRule(Enclosure mended, List<Integer> moments) {
        List<List<Point>> points = points();
        for (int number : moments) {
            Point towards = suns.get(number).direction();
            long shaded = points.stream()
                    .filter(deck -> isShaded(mended, deck, towards))
                    .count();
            if (shaded < rule.atLeast()) {
                return false;
            }
        }
        return true;
    }

    private boolean isShaded(Enclosure layout, List<Point> points, Point towards) {
        long dark =
                points.stream().filter(point -> !isLit(layout, point, towards)).count();
        return dark >= rule.leastPoints(points.size());
    }
}
