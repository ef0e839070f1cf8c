package limbway.reports.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.reports.measure.ShadeMap;
import limbway.reports.words.Figures;
import limbway.reports.words.Hours;

/** Draws on a plan how many hours of shade the ground and the decks get. */
public final class ShadeMapChart {

    private static final int KEY_PX = 86;

    /** Cells overlap by so much, that no paper shows between them. */
    private static final double OVERLAP_PX = 0.8;

    private final Enclosure enclosure;
    private final Frame frame;
    private final ShadeMap map;
    private final double sunH;
    private final ToDoubleFunction<ShadeMap.Cell> hours;
    private final ToDoubleFunction<ShadeMap.Area> meanHours;

    private ShadeMapChart(
            Enclosure enclosure,
            ShadeMap map,
            double sunH,
            ToDoubleFunction<ShadeMap.Cell> hours,
            ToDoubleFunction<ShadeMap.Area> meanHours) {
        this.enclosure = enclosure;
        this.frame = Frame.of(enclosure);
        this.map = map;
        this.sunH = sunH;
        this.hours = hours;
        this.meanHours = meanHours;
    }

    /**
     * Hours of shade a day, averaged over the year.
     *
     * @param enclosure what stands there
     * @param map its shade
     * @return the picture
     */
    public static Picture ofYear(Enclosure enclosure, ShadeMap map) {
        return new ShadeMapChart(enclosure, map, map.yearSunH(), ShadeMap.Cell::yearH, ShadeMap.Area::yearH)
                .picture("shade-map-year", "Hours of shade a day, averaged over the year");
    }

    /**
     * Hours of shade on the one day of the map.
     *
     * @param enclosure what stands there
     * @param map its shade
     * @return the picture
     */
    public static Picture ofDay(Enclosure enclosure, ShadeMap map) {
        return new ShadeMapChart(enclosure, map, map.daySunH(), ShadeMap.Cell::dayH, ShadeMap.Area::dayH)
                .picture("shade-map-day", "Hours of shade on " + Hours.day(map.day()));
    }

    private Picture picture(String id, String title) {
        int rows = KeySign.rows(KeySign.of(enclosure));
        return new Picture(
                id,
                title,
                "The enclosure from above with north on top. The darker a place of the ground or of a deck, the more hours of "
                        + "shade it gets; each deck is named with its mean. Supports, roofs, sails, buildings and crowns are "
                        + "drawn over it.",
                Style.WIDTH_PX,
                (int) Math.ceil(frame.planArea().getMaxY()) + KEY_PX + rows * KeySign.ROW_PX,
                this::paint,
                table());
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Key key = new Key(g, enclosure, frame);
        key.drawNorth(frame.xPx(frame.eastM()) - 24, Frame.PLAN_TOP_PX - 10);
        Structure structure = new Structure(g, enclosure, frame);
        structure.drawGround();
        cells(g, map.ground(), frame.inPlan(enclosure.ground().outline()));
        for (int i = 0; i < map.decks().size(); i++) {
            cells(
                    g,
                    map.decks().get(i),
                    frame.inPlan(enclosure.platforms().get(i).outline()));
        }
        structure.drawStanding(false);
        names(g);
        double y = frame.planArea().getMaxY() + 24;
        shares(g, y);
        key.drawScale(y + 24);
        key.drawSigns(y + 54);
    }

    private void cells(Graphics2D g, ShadeMap.Area of, Shape outline) {
        Shape clip = g.getClip();
        g.clip(outline);
        double side = of.sizeM() * frame.pxPerM() + OVERLAP_PX;
        int from = 0;
        while (from < of.cells().size()) {
            ShadeMap.Cell first = of.cells().get(from);
            int to = from + 1;
            while (to < of.cells().size()
                    && continues(of.cells().get(to - 1), of.cells().get(to), of.sizeM())) {
                to++;
            }
            g.setColor(colour(first));
            double west = frame.xPx(first.xM() - of.sizeM() / 2);
            double top = frame.planYPx(first.yM() + of.sizeM() / 2);
            double width = (to - from) * of.sizeM() * frame.pxPerM() + OVERLAP_PX;
            g.fill(new Rectangle2D.Double(west, top, width, side));
            from = to;
        }
        g.setClip(clip);
    }

    /** Whether a cell is the eastern neighbour of another and has its colour. */
    private boolean continues(ShadeMap.Cell before, ShadeMap.Cell next, double sizeM) {
        return next.yM() == before.yM()
                && next.xM() - before.xM() < 1.5 * sizeM
                && colour(next).equals(colour(before));
    }

    private Color colour(ShadeMap.Cell cell) {
        return ShadeStyle.ofShare(sunH > 0 ? hours.applyAsDouble(cell) / sunH : 0);
    }

    private void names(Graphics2D g) {
        Labels labels = new Labels(g, frame.planArea());
        g.setColor(Style.INK);
        for (int i = 0; i < map.decks().size(); i++) {
            Platform platform = enclosure.platforms().get(i);
            var at = frame.inPlan(platform.centre());
            double halfPx = frame.inPlan(platform.outline()).getBounds2D().getWidth() / 2;
            labels.write(
                    platform.id() + " "
                            + Figures.decimals(
                                    meanHours.applyAsDouble(map.decks().get(i)), 1) + " h",
                    at.getX(),
                    at.getY(),
                    halfPx,
                    Style.strongType(11),
                    70);
        }
    }

    private void shares(Graphics2D g, double y) {
        Lettering letters = new Lettering(g);
        double x = letters.from("hours of shade", Frame.LEFT_PX, y + 4, Style.type(12), Style.INK) + 12;
        int steps = ShadeStyle.steps();
        for (int step = 0; step < steps; step++) {
            Color fill = ShadeStyle.ofShare((step + 0.5) / steps);
            Rectangle2D box = new Rectangle2D.Double(x, y - 8, 22, 16);
            g.setColor(fill);
            g.fill(box);
            g.setColor(Style.FAINT);
            g.setStroke(Style.line(0.6));
            g.draw(box);
            String words =
                    Figures.decimals(sunH * step / steps, 1) + " to " + Figures.decimals(sunH * (step + 1) / steps, 1);
            x = letters.from(words, x + 27, y + 4, Style.type(12), Style.INK) + 14;
        }
        letters.from(
                "of " + Figures.decimals(sunH, 1) + " h with sun", Frame.LEFT_PX, y + 28, Style.type(12), Style.INK);
    }

    private DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("ground", map.ground()));
        for (ShadeMap.Area deck : map.decks()) {
            rows.add(row(deck.name(), deck));
        }
        return new DataTable(List.of("where", "hours of shade, mean", "least", "most"), rows);
    }

    private List<String> row(String name, ShadeMap.Area of) {
        var statistics = of.cells().stream().mapToDouble(hours).summaryStatistics();
        return List.of(
                name,
                Figures.decimals(meanHours.applyAsDouble(of), 1),
                Figures.decimals(of.cells().isEmpty() ? 0 : statistics.getMin(), 1),
                Figures.decimals(of.cells().isEmpty() ? 0 : statistics.getMax(), 1));
    }
}
