package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.reports.measure.SkyPatch;
import limbway.reports.measure.SunPath;
import limbway.reports.words.Hours;
import limbway.reports.words.ShadeText;

/** Draws where the sun goes over a site, and where it stands when shade is too little. */
public final class SunPathChart {

    private static final int HEIGHT_PX = 718;
    private static final double MIDDLE_Y_PX = 318;
    private static final double RADIUS_PX = 278;
    private static final double HOUR_REACH_PX = 22;
    private static final Color LAND = new Color(0x66, 0x66, 0x60);
    private static final Color DAY_LINE = new Color(0x1E, 0x3F, 0x63);
    private static final String[] DAY_NAMES = {
        "21 Dec", "21 Jan, Nov", "21 Feb, Oct", "21 Mar, Sep", "21 Apr, Aug", "21 May, Jul", "21 Jun"
    };

    private final Site site;
    private final List<SunPath> days;
    private final List<SunPath> hours;
    private final List<SkyPatch> patches;
    private final double lowestSunDeg;

    private SunPathChart(
            Site site, List<SunPath> days, List<SunPath> hours, List<SkyPatch> patches, double lowestSunDeg) {
        this.site = site;
        this.days = days;
        this.hours = hours;
        this.patches = patches;
        this.lowestSunDeg = lowestSunDeg;
    }

    /**
     * The sky over a site as a round plan, the horizon its edge and the zenith its middle.
     *
     * @param site where, with its horizon
     * @param days lines of days from December to June
     * @param hours lines of hours
     * @param patches parts of the sky that the sun comes to, with what is in breach then
     * @param lowestSunDeg height of the sun from which shade is asked for [degrees]
     * @return the picture
     */
    public static Picture of(
            Site site, List<SunPath> days, List<SunPath> hours, List<SkyPatch> patches, double lowestSunDeg) {
        SunPathChart chart = new SunPathChart(site, days, hours, patches, lowestSunDeg);
        return new Picture(
                "sun-paths",
                "Where the sun goes, and where it stands when shade is too little",
                "The sky as a round plan with north on top: the zenith in the middle, the horizon at the edge. Seven lines "
                        + "show the sun on the 21st of the months, thin ones each hour of standard time; filled parts of the "
                        + "sky are those from which the sun finds too few platforms in shade.",
                Style.WIDTH_PX,
                HEIGHT_PX,
                chart::paint,
                chart.table());
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Shape sky = ring(0);
        g.setColor(Style.PAPER);
        g.fill(sky);
        patches.stream().filter(patch -> patch.breachMinutes() > 0).forEach(patch -> fill(g, patch));
        rings(g);
        land(g);
        for (SunPath hour : hours) {
            g.setColor(Style.FAINT);
            g.setStroke(Style.line(0.7));
            line(g, hour.positions());
        }
        for (SunPath day : days) {
            boolean turning = day.month() == 12 || day.month() == 6;
            g.setColor(DAY_LINE);
            g.setStroke(Style.line(turning || day.month() == 3 ? 2.2 : 1.1));
            line(g, day.positions());
        }
        names(g);
        key(g);
    }

    private void fill(Graphics2D g, SkyPatch patch) {
        Path2D shape = new Path2D.Double();
        int a0 = patch.azimuthDeg();
        int h0 = patch.altitudeDeg();
        for (int i = 0; i <= SkyPatch.AZIMUTH_DEG; i++) {
            add(shape, at(a0 + i, h0), i == 0);
        }
        for (int i = SkyPatch.AZIMUTH_DEG; i >= 0; i--) {
            add(shape, at(a0 + i, h0 + SkyPatch.ALTITUDE_DEG), false);
        }
        shape.closePath();
        g.setColor(patch.breachShare() >= 0.5 ? ShadeStyle.SKY_BREACH : ShadeStyle.SKY_PART_BREACH);
        g.fill(shape);
        g.setColor(Style.PAPER);
        g.setStroke(Style.line(0.6));
        g.draw(shape);
    }

    private static void add(Path2D path, Point2D point, boolean first) {
        if (first) {
            path.moveTo(point.getX(), point.getY());
        } else {
            path.lineTo(point.getX(), point.getY());
        }
    }

    private void rings(Graphics2D g) {
        Lettering letters = new Lettering(g);
        for (int altitude = 0; altitude < 90; altitude += 15) {
            g.setColor(altitude == 0 ? Style.INK : Style.GRID);
            g.setStroke(Style.line(altitude == 0 ? 1.6 : 1));
            g.draw(ring(altitude));
        }
        g.setColor(Style.FAINT);
        g.setStroke(Style.dashed(0.9));
        g.draw(ring(lowestSunDeg));
        g.setStroke(Style.line(0.8));
        for (int azimuth = 0; azimuth < 360; azimuth += 15) {
            g.setColor(azimuth % 90 == 0 ? Style.GRID : new Color(0xEE, 0xEE, 0xEE));
            g.draw(new Line2D.Double(at(azimuth, 0), at(azimuth, azimuth % 90 == 0 ? 90 : 75)));
            Point2D out = at(azimuth, -4);
            String name = compass(azimuth);
            letters.middle(
                    name,
                    out.getX(),
                    out.getY() + 5,
                    azimuth % 45 == 0 ? Style.strongType(13) : Style.type(11),
                    azimuth % 45 == 0 ? Style.INK : Style.FAINT);
        }
    }

    private static String compass(int azimuthDeg) {
        return azimuthDeg % 45 == 0
                ? new String[] {"N", "NE", "E", "SE", "S", "SW", "W", "NW"}[azimuthDeg / 45]
                : azimuthDeg % 30 == 0 ? azimuthDeg + "°" : "";
    }

    /** What of the sky lies behind the land around. */
    private void land(Graphics2D g) {
        if (site.horizon().marks().isEmpty()) {
            return;
        }
        Path2D open = new Path2D.Double();
        for (int azimuth = 0; azimuth < 360; azimuth++) {
            add(open, at(azimuth, Math.max(0, site.horizon().altitudeDeg(azimuth))), azimuth == 0);
        }
        open.closePath();
        Area hidden = new Area(ring(0));
        hidden.subtract(new Area(open));
        g.setColor(LAND);
        g.fill(hidden);
    }

    private static void line(Graphics2D g, List<SunPosition> positions) {
        Path2D path = new Path2D.Double();
        boolean first = true;
        for (SunPosition position : positions) {
            add(path, at(position.azimuthDeg(), position.altitudeDeg()), first);
            first = false;
        }
        if (!first) {
            g.draw(path);
        }
    }

    private void names(Graphics2D g) {
        Labels labels = new Labels(g, new Rectangle2D.Double(0, 0, Style.WIDTH_PX, HEIGHT_PX));
        g.setColor(Style.INK);
        for (int i = 0; i < days.size(); i++) {
            List<SunPosition> line = days.get(i).positions();
            if (!line.isEmpty()) {
                // near the horizon lines lie apart; names stand in turns by their evening and by their morning
                SunPosition by = line.get(line.size() * (i % 2 == 0 ? 88 : 20) / 100);
                Point2D at = at(by.azimuthDeg(), by.altitudeDeg());
                labels.write(DAY_NAMES[i], at.getX(), at.getY(), 2, Style.strongType(11), 22);
            }
        }
        for (SunPath hour : hours) {
            SunPosition by = hour.positions().get(0);
            for (SunPosition position : hour.positions()) {
                by = position.altitudeDeg() > by.altitudeDeg() ? position : by;
            }
            Point2D at = at(by.azimuthDeg(), by.altitudeDeg());
            labels.write(Integer.toString(hour.hour()), at.getX(), at.getY(), 1, Style.type(11), HOUR_REACH_PX);
        }
        for (int altitude = 15; altitude < 90; altitude += 15) {
            Point2D at = at(0, altitude);
            g.setColor(Style.FAINT);
            labels.write(altitude + "°", at.getX(), at.getY(), 1, Style.type(10), 0);
        }
    }

    private void key(Graphics2D g) {
        Lettering letters = new Lettering(g);
        double y = HEIGHT_PX - 66;
        double x = sample(g, 44, y, ShadeStyle.SKY_PART_BREACH, "too few in shade, less than half of the time");
        x = sample(g, x, y, ShadeStyle.SKY_BREACH, "half of it or more");
        if (!site.horizon().marks().isEmpty()) {
            sample(g, x, y, LAND, "land before the sky");
        }
        letters.from(
                "Rings: height of the sun above the level, every 15°; below the dashed one ("
                        + ShadeText.degrees(lowestSunDeg) + ") no shade is asked for.",
                44,
                y + 24,
                Style.type(12),
                Style.INK);
        letters.from("Numbers on thin lines: hour of standard time.", 44, y + 42, Style.type(12), Style.INK);
    }

    private static double sample(Graphics2D g, double x, double y, Color fill, String words) {
        g.setColor(fill);
        g.fill(new Rectangle2D.Double(x, y - 8, 22, 16));
        return new Lettering(g).from(words, x + 28, y + 4, Style.type(12), Style.INK) + 18;
    }

    /** A place of the sky; heights are in proportion to the distance from the edge. */
    private static Point2D at(double azimuthDeg, double altitudeDeg) {
        double r = RADIUS_PX * (90 - altitudeDeg) / 90;
        double azimuth = StrictMath.toRadians(azimuthDeg);
        return new Point2D.Double(
                Style.WIDTH_PX / 2.0 + r * StrictMath.sin(azimuth), MIDDLE_Y_PX - r * StrictMath.cos(azimuth));
    }

    private static Shape ring(double altitudeDeg) {
        double r = RADIUS_PX * (90 - altitudeDeg) / 90;
        return new Ellipse2D.Double(Style.WIDTH_PX / 2.0 - r, MIDDLE_Y_PX - r, 2 * r, 2 * r);
    }

    private DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (SkyPatch patch : patches) {
            if (patch.breachMinutes() > 0) {
                rows.add(List.of(
                        patch.azimuthDeg() + " to " + (patch.azimuthDeg() + SkyPatch.AZIMUTH_DEG) + "°",
                        patch.altitudeDeg() + " to " + (patch.altitudeDeg() + SkyPatch.ALTITUDE_DEG) + "°",
                        Hours.text(patch.sunMinutes()),
                        Hours.text(patch.breachMinutes())));
            }
        }
        return new DataTable(List.of("azimuth", "height", "sun there", "too few in shade"), rows);
    }
}
