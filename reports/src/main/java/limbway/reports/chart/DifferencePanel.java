package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

import limbway.reports.words.Figures;

/**
 * Differences of one unit, below each other on one axis.
 *
 * @param heading what is shown, with its unit
 * @param key what the shapes mean, in their order; empty if there is one shape
 * @param rows from top to bottom
 * @param sheet how they are laid out
 */
record DifferencePanel(String heading, List<String> key, List<Row> rows, DifferenceSheet sheet) {

    /** A label and what stands beside it. */
    record Row(String label, List<Mark> marks) {}

    /** A difference with the ends of its interval; the shape is the number of its key. */
    record Mark(double middle, double lo, double hi, int shape, boolean filled) {}

    private static final double RIGHT_PX = 24;
    private static final double TOP_PX = 8;
    private static final double HEADING_PX = 26;
    private static final double KEY_PX = 20;
    private static final double AXIS_PX = 40;
    private static final double MARK_ROW_PX = 15;
    private static final double LINE_PX = 15;
    private static final double BETWEEN_PX = 10;
    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    private static final double ROOM = 1.06;

    /** Beyond this an axis is not drawn: relative differences reach 200 % at most, only their intervals may be wider. */
    private static final double MOST = 210;

    static int heightPx(List<DifferencePanel> panels) {
        return (int) Math.ceil(
                TOP_PX + panels.stream().mapToDouble(DifferencePanel::heightPx).sum());
    }

    static void paint(Graphics2D g, List<DifferencePanel> panels) {
        double top = TOP_PX;
        for (DifferencePanel panel : panels) {
            panel.paint(g, top);
            top += panel.heightPx();
        }
    }

    private double heightPx() {
        return HEADING_PX
                + (headings().size() - 1) * LINE_PX
                + keyRows().size() * KEY_PX
                + rows.stream().mapToDouble(this::heightPx).sum()
                + AXIS_PX;
    }

    private double heightPx(Row row) {
        double marksPx = row.marks.size() * MARK_ROW_PX;
        double labelPx = lines(row.label).size() * LINE_PX;
        return (sheet.labelsAbove() ? marksPx + labelPx : Math.max(marksPx, labelPx)) + BETWEEN_PX;
    }

    private void paint(Graphics2D g, double topPx) {
        Lettering letters = new Lettering(g);
        double headingY = topPx + 16;
        for (String line : headings()) {
            letters.from(line, TOP_PX, headingY, Style.strongType(13), Style.INK);
            headingY += LINE_PX;
        }
        double y = topPx + HEADING_PX + (headings().size() - 1) * LINE_PX;
        for (List<Integer> keyRow : keyRows()) {
            double x = TOP_PX + 8;
            for (int shape : keyRow) {
                draw(g, shape(shape), x, y + 5, true);
                x = letters.from(key.get(shape), x + 12, y + 9, Style.type(12), Style.INK) + 24;
            }
            y += KEY_PX;
        }
        double bottom = y + rows.stream().mapToDouble(this::heightPx).sum();
        axis(g, letters, y, bottom);
        for (Row row : rows) {
            double markY = labelled(g, letters, row, y) + MARK_ROW_PX / 2;
            for (Mark mark : row.marks) {
                paint(g, mark, markY);
                markY += MARK_ROW_PX;
            }
            y += heightPx(row);
        }
    }

    /** Writes the label of a row that begins at a height, and tells where its marks begin. */
    private double labelled(Graphics2D g, Lettering letters, Row row, double y) {
        List<String> lines = lines(row.label);
        if (sheet.labelsAbove()) {
            // the lines of the axis do not go through the words
            g.setColor(Style.PAPER);
            g.fill(new Rectangle2D.Double(0, y, sheet.widthPx(), lines.size() * LINE_PX));
        }
        double insidePx = heightPx(row) - BETWEEN_PX;
        double textY = sheet.labelsAbove() ? y + 12 : y + (insidePx - lines.size() * LINE_PX) / 2 + 12;
        for (String line : lines) {
            if (sheet.labelsAbove()) {
                letters.from(line, TOP_PX, textY, Style.type(12), Style.INK);
            } else {
                letters.upTo(line, sheet.leftPx() - 14, textY, Style.type(12), Style.INK);
            }
            textY += LINE_PX;
        }
        return sheet.labelsAbove() ? y + lines.size() * LINE_PX : y + (insidePx - row.marks.size() * MARK_ROW_PX) / 2;
    }

    /** Shapes by rows of the key, so that long names do not leave the picture. */
    private List<List<Integer>> keyRows() {
        List<List<Integer>> all = new ArrayList<>();
        int used = Integer.MAX_VALUE / 2;
        for (int shape = 0; shape < key.size(); shape++) {
            int length = key.get(shape).length() + 6;
            if (used + length > sheet.keyCharacters()) {
                all.add(new ArrayList<>());
                used = 0;
            }
            all.get(all.size() - 1).add(shape);
            used += length;
        }
        return all;
    }

    private void axis(Graphics2D g, Lettering letters, double top, double bottom) {
        double step = step();
        for (double tick = Math.ceil(least() / step) * step; tick <= greatest() + 1e-9; tick += step) {
            double x = x(tick);
            boolean zero = Math.abs(tick) < step / 2;
            g.setColor(zero ? Style.INK : Style.GRID);
            g.setStroke(Style.line(zero ? 2 : 1));
            g.draw(new Line2D.Double(x, top - 2, x, bottom));
            String text = Figures.decimals(zero ? 0 : tick, 1);
            letters.middle(
                    (tick > 0 && !zero ? "+" : "") + text.replace('-', '\u2212'),
                    x,
                    bottom + 15,
                    Style.type(12),
                    Style.INK);
        }
    }

    private void paint(Graphics2D g, Mark mark, double y) {
        double left = Math.max(least(), mark.lo);
        double right = Math.min(greatest(), mark.hi);
        g.setColor(Style.INK);
        g.setStroke(Style.line(1.6));
        g.draw(new Line2D.Double(x(left), y, x(right), y));
        end(g, x(left), y, mark.lo < least() ? 1 : 0);
        end(g, x(right), y, mark.hi > greatest() ? -1 : 0);
        draw(g, shape(mark.shape), x(mark.middle), y, mark.filled);
    }

    /** A small bar, or an arrow where the line goes on. */
    private static void end(Graphics2D g, double x, double y, int inwards) {
        if (inwards == 0) {
            g.draw(new Line2D.Double(x, y - 3.5, x, y + 3.5));
        } else {
            g.draw(new Line2D.Double(x, y, x + 6.0 * inwards, y - 4));
            g.draw(new Line2D.Double(x, y, x + 6.0 * inwards, y + 4));
        }
    }

    private static void draw(Graphics2D g, Shape shape, double x, double y, boolean filled) {
        Shape there = AffineTransform.getTranslateInstance(x, y).createTransformedShape(shape);
        g.setColor(filled ? Style.OFF_GROUND : Style.PAPER);
        g.fill(there);
        g.setColor(filled ? Style.OFF_GROUND : Style.INK);
        g.setStroke(Style.line(1.5));
        g.draw(there);
    }

    private static Shape shape(int number) {
        return switch (number % 4) {
            case 0 -> new Ellipse2D.Double(-4.5, -4.5, 9, 9);
            case 1 -> new Rectangle2D.Double(-4, -4, 8, 8);
            case 2 -> corners(0, -5.5, 5, 4, -5, 4);
            default -> corners(0, -6, 5, 0, 0, 6, -5, 0);
        };
    }

    private static Shape corners(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    private double x(double value) {
        return sheet.leftPx()
                + (value - least()) / (greatest() - least()) * (sheet.widthPx() - sheet.leftPx() - RIGHT_PX);
    }

    private double least() {
        double least = rows.stream()
                .flatMap(row -> row.marks.stream())
                .mapToDouble(Mark::lo)
                .min()
                .orElse(0);
        return Math.max(-MOST, Math.min(ROOM * least, -0.08 * reach()));
    }

    private double greatest() {
        double greatest = rows.stream()
                .flatMap(row -> row.marks.stream())
                .mapToDouble(Mark::hi)
                .max()
                .orElse(0);
        return Math.min(MOST, Math.max(ROOM * greatest, 0.08 * reach()));
    }

    /** The farthest end from nothing; 1 where all is nothing. */
    private double reach() {
        double reach = rows.stream()
                .flatMap(row -> row.marks.stream())
                .mapToDouble(mark -> Math.max(Math.abs(mark.lo), Math.abs(mark.hi)))
                .max()
                .orElse(0);
        return reach == 0 ? 1 : Math.min(MOST, reach);
    }

    private double step() {
        double step = STEPS[0];
        for (int i = 0; i < STEPS.length && (greatest() - least()) / step > sheet.mostTicks(); i++) {
            step = STEPS[i];
        }
        return step;
    }

    private List<String> headings() {
        return lines(heading, sheet.headingCharacters());
    }

    private List<String> lines(String label) {
        return lines(label, sheet.labelCharacters());
    }

    private static List<String> lines(String label, int characters) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : label.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > characters) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
