package limbway.reports.chart;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.reports.words.Figures;
import limbway.reports.words.Unbroken;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.worlds.InputEffect;
import limbway.sim.experiment.worlds.PairFound;
import limbway.sim.experiment.worlds.Reversal;
import limbway.sim.experiment.worlds.World;
import limbway.sim.experiment.worlds.WorldsFound;

/** Draws the difference between two layouts in every plausible world against the inputs that explain most of its spread. */
public final class WorldsChart {

    private static final int MOST = 4;
    private static final double POINTS = 100;
    private static final double LEFT_PX = 58;
    private static final double BETWEEN_PX = 58;
    private static final double WIDE_PX = 292;
    private static final double HIGH_PX = 168;
    private static final double KEY_PX = 54;
    private static final double HEADING_PX = 40;
    private static final double BELOW_PX = 46;
    private static final double DOT_PX = 2.6;
    private static final double ROOM = 0.06;
    private static final int MOST_TICKS = 6;

    private final WorldsFound found;
    private final PairFound pair;
    private final double factor;
    private final List<InputEffect> shown;
    private final double least;
    private final double greatest;

    private WorldsChart(WorldsFound found, PairFound pair, boolean isShare) {
        this.found = found;
        this.pair = pair;
        this.factor = isShare ? POINTS : 1;
        this.shown = pair.effects().stream().limit(MOST).toList();
        List<Double> all = new ArrayList<>(List.of(0.0));
        for (World world : found.worlds()) {
            world.difference(pair.a(), pair.b(), pair.criterion()).ifPresent(d -> all.add(factor * d));
        }
        double low = all.stream().mapToDouble(d -> d).min().orElse(0);
        double high = all.stream().mapToDouble(d -> d).max().orElse(0);
        double room = high > low ? ROOM * (high - low) : 1;
        this.least = low - room;
        this.greatest = high + room;
    }

    /**
     * Small pictures side by side, one for each of the four inputs that explain most.
     *
     * @param id file name without ending
     * @param title what it shows
     * @param found the worlds
     * @param pair the two layouts
     * @param isShare whether the difference is one of shares, shown in points
     * @param table the numbers behind it
     * @return the picture
     */
    public static Picture of(
            String id, String title, WorldsFound found, PairFound pair, boolean isShare, DataTable table) {
        WorldsChart chart = new WorldsChart(found, pair, isShare);
        int rows = (chart.shown.size() + 1) / 2;
        return new Picture(
                id,
                title,
                "Dots, one for each plausible world, once for each of the inputs that explain most: to the right the value of "
                        + "the input over its range, upwards the difference. Above the heavy line the first layout has more, "
                        + "and the dots are filled; else they are hollow. A dashed upright line: what is assumed. A solid "
                        + "one: where the sign turns with everything else as assumed.",
                Style.WIDTH_PX,
                (int) (KEY_PX + rows * (HEADING_PX + HIGH_PX + BELOW_PX)),
                (g, area) -> chart.paint(g),
                table);
    }

    private void paint(Graphics2D g) {
        key(g);
        for (int i = 0; i < shown.size(); i++) {
            int row = i / 2;
            double left = LEFT_PX + i % 2 * (WIDE_PX + BETWEEN_PX);
            double top = KEY_PX + HEADING_PX + row * (HEADING_PX + HIGH_PX + BELOW_PX);
            paint(g, shown.get(i), new Rectangle2D.Double(left, top, WIDE_PX, HIGH_PX));
        }
    }

    private void key(Graphics2D g) {
        Lettering letters = new Lettering(g);
        dot(g, 14, 18, true);
        double x = letters.from(found.layouts().get(pair.a()) + " has more", 22, 22, Style.type(12), Style.INK);
        dot(g, x + 26, 18, false);
        String other = pair.equal() > 0 ? " has as much or more" : " has more";
        letters.from(found.layouts().get(pair.b()) + other, x + 34, 22, Style.type(12), Style.INK);
        g.setColor(Style.FAINT);
        g.setStroke(Style.dashed(1.4));
        g.draw(new Line2D.Double(8, 38, 24, 38));
        x = letters.from("assumed", 30, 42, Style.type(12), Style.INK);
        g.setColor(Style.INK);
        g.setStroke(Style.line(2));
        g.draw(new Line2D.Double(x + 24, 38, x + 40, 38));
        x = letters.from("the sign turns, everything else as assumed", x + 46, 42, Style.type(12), Style.INK);
        letters.from("upwards: " + unit(), x + 24, 42, Style.type(12), Style.INK);
    }

    private String unit() {
        return factor == POINTS ? "difference [points]" : "difference";
    }

    private void paint(Graphics2D g, InputEffect effect, Rectangle2D box) {
        Lettering letters = new Lettering(g);
        Factor input = effect.input();
        double y = box.getY() - 24;
        for (String line : heading(g, effect)) {
            letters.from(line, box.getX(), y, Style.strongType(12), Style.INK);
            y += 15;
        }
        scale(g, letters, box);
        letters.from(value(input, input.parameter().low()), box.getX(), box.getMaxY() + 16, Style.type(12), Style.INK);
        letters.upTo(
                value(input, input.parameter().high()), box.getMaxX(), box.getMaxY() + 16, Style.type(12), Style.INK);
        double assumed = input.shareOf(input.parameter().value());
        if (assumed >= 0 && assumed <= 1) {
            g.setColor(Style.FAINT);
            g.setStroke(Style.dashed(1.4));
            upright(g, box, assumed);
        }
        for (World world : found.worlds()) {
            world.difference(pair.a(), pair.b(), pair.criterion()).ifPresent(d -> {
                double share =
                        input.shareOf(world.values().get(input.parameter().name()));
                dot(g, box.getX() + share * box.getWidth(), y(box, factor * d), d > 0);
            });
        }
        for (Reversal reversal : pair.reversals()) {
            if (reversal.input().equals(input) && reversal.turn().isPresent()) {
                double at = reversal.turn().get().value();
                g.setColor(Style.INK);
                g.setStroke(Style.line(2));
                upright(g, box, input.shareOf(at));
                double x = box.getX() + input.shareOf(at) * box.getWidth();
                letters.middle(value(input, at), x, box.getMaxY() + 32, Style.strongType(12), Style.INK);
            }
        }
    }

    private static void upright(Graphics2D g, Rectangle2D box, double share) {
        double x = box.getX() + share * box.getWidth();
        g.draw(new Line2D.Double(x, box.getY(), x, box.getMaxY() + 4));
    }

    private void scale(Graphics2D g, Lettering letters, Rectangle2D box) {
        double step = step();
        for (double tick = Math.ceil(least / step) * step; tick <= greatest; tick += step) {
            boolean zero = Math.abs(tick) < step / 2;
            g.setColor(zero ? Style.INK : Style.GRID);
            g.setStroke(Style.line(zero ? 2 : 1));
            double y = y(box, zero ? 0 : tick);
            g.draw(new Line2D.Double(box.getX(), y, box.getMaxX(), y));
            String text = Figures.plain(zero ? 0 : tick).replace('-', '\u2212');
            letters.upTo((tick > 0 && !zero ? "+" : "") + text, box.getX() - 6, y + 4, Style.type(12), Style.INK);
        }
    }

    /** 1, 2 or 5 times a power of ten. */
    private double step() {
        double step = StrictMath.pow(10, Math.floor(StrictMath.log10((greatest - least) / MOST_TICKS)));
        for (double times : new double[] {1, 2, 5, 10}) {
            if ((greatest - least) / (step * times) <= MOST_TICKS) {
                return step * times;
            }
        }
        return 10 * step;
    }

    private double y(Rectangle2D box, double value) {
        return box.getMaxY() - (value - least) / (greatest - least) * box.getHeight();
    }

    private static void dot(Graphics2D g, double x, double y, boolean filled) {
        Ellipse2D dot = new Ellipse2D.Double(x - DOT_PX, y - DOT_PX, 2 * DOT_PX, 2 * DOT_PX);
        g.setColor(filled ? Style.OFF_GROUND : Style.PAPER);
        g.fill(dot);
        g.setColor(filled ? Style.OFF_GROUND : Style.INK);
        g.setStroke(Style.line(1));
        g.draw(dot);
    }

    /** What the input is, on at most two lines of the width of a panel, and how much it explains. */
    private static List<String> heading(Graphics2D g, InputEffect effect) {
        String words = Unbroken.text(effect.input().parameter().meaning().split(";", 2)[0] + ": "
                + Figures.percent(Math.max(0, effect.index().index()))
                + (effect.index().isAboveFloor() ? "" : ", may be accident"));
        FontMetrics metrics = g.getFontMetrics(Style.strongType(12));
        StringBuilder first = new StringBuilder();
        List<String> rest = new ArrayList<>(List.of(words.split(" ")));
        while (!rest.isEmpty() && metrics.stringWidth(first + " " + rest.get(0)) <= WIDE_PX) {
            first.append(first.length() == 0 ? "" : " ").append(rest.remove(0));
        }
        if (rest.isEmpty()) {
            return List.of("", first.toString());
        }
        StringBuilder second = new StringBuilder(String.join(" ", rest));
        while (metrics.stringWidth(second.toString()) > WIDE_PX) {
            second.deleteCharAt(0).setCharAt(0, '\u2026');
        }
        return List.of(first.toString(), second.toString());
    }

    private static String value(Factor input, double value) {
        return Figures.plain(value).replace('-', '\u2212')
                + (input.parameter().unit().equals("1")
                        ? ""
                        : " " + input.parameter().unit());
    }
}
