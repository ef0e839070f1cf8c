package limbway.reports.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;
import limbway.reports.words.EnergyText;
import limbway.reports.words.Figures;
import limbway.reports.words.PartText;

/** Draws ways as bars one below the other, divided by part, on one scale; narrow enough for a telephone. */
public final class WayBars {

    /**
     * One bar.
     *
     * @param heading what this bar and those after it are about, told over it; empty where it goes on
     * @param label what it is
     * @param energy its energy; empty where there is no such way
     */
    public record Row(String heading, String label, Optional<EnergyByPart> energy) {}

    /** Width of the picture [px]. */
    public static final int WIDTH_PX = 480;

    private static final double LEFT_PX = 8;
    private static final double RIGHT_PX = 12;
    private static final double LINE_PX = 17;
    private static final double BAR_PX = 28;
    private static final double BETWEEN_PX = 14;
    private static final double KEY_LINE_PX = 22;
    private static final double BOX_PX = 14;
    private static final double MILLI = 1000;

    /** Letters of a heading that surely fit into a line; the rest goes to the next. */
    private static final int LINE_LETTERS = 60;

    private final List<Row> rows;
    private final List<LocomotorMode> modes;
    private final double longestMilliJ;

    private WayBars(List<Row> rows) {
        this.rows = rows;
        this.modes = PartText.asTold().stream()
                .filter(mode -> rows.stream()
                        .anyMatch(
                                row -> row.energy.map(one -> one.part(mode) > 0).orElse(false)))
                .toList();
        this.longestMilliJ = rows.stream()
                .mapToDouble(row -> row.energy.map(EnergyByPart::totalMilliJ).orElse(0L))
                .max()
                .orElse(0);
    }

    /**
     * Bars of ways.
     *
     * @param id file name without ending
     * @param title what is shown
     * @param rows one for each way
     * @return the picture, with all parts in its table
     */
    public static Picture of(String id, String title, List<Row> rows) {
        WayBars bars = new WayBars(List.copyOf(rows));
        return new Picture(
                id,
                title,
                "A bar for each way on the same scale, divided into "
                        + String.join(
                                ", ", bars.modes.stream().map(PartText::doing).toList()) + ".",
                WIDTH_PX,
                (int) Math.ceil(bars.heightPx()),
                bars::paint,
                bars.table());
    }

    private double heightPx() {
        double height = BETWEEN_PX + keyLines().size() * KEY_LINE_PX;
        for (Row row : rows) {
            height += headingPx(row) + LINE_PX + BAR_PX;
        }
        return height;
    }

    private static double headingPx(Row row) {
        return row.heading.isEmpty() ? 0 : BETWEEN_PX + lines(row.heading).size() * LINE_PX;
    }

    private static String label(Row row) {
        return row.label + ": "
                + row.energy
                        .map(one -> Figures.energy(one.totalMilliJ() / MILLI))
                        .orElse("no way");
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Lettering letters = new Lettering(g);
        double y = 4;
        for (Row row : rows) {
            if (!row.heading.isEmpty()) {
                y += BETWEEN_PX;
                for (String line : lines(row.heading)) {
                    y += LINE_PX;
                    letters.from(line, LEFT_PX, y - 4, Style.strongType(13), Style.INK);
                }
            }
            y += LINE_PX;
            letters.from(label(row), LEFT_PX, y - 4, Style.type(13), Style.INK);
            bar(g, row, y, letters);
            y += BAR_PX;
        }
        key(g, y, letters);
    }

    private void bar(Graphics2D g, Row row, double y, Lettering letters) {
        g.setColor(Style.FAINT);
        g.setStroke(Style.line(1));
        g.draw(new Line2D.Double(LEFT_PX, y, LEFT_PX, y + BAR_PX - 4));
        if (row.energy.isEmpty()) {
            return;
        }
        double x = LEFT_PX;
        double perMilliJ = (WIDTH_PX - LEFT_PX - RIGHT_PX) / Math.max(1, longestMilliJ);
        for (LocomotorMode mode : modes) {
            long milliJ = row.energy.get().part(mode);
            if (milliJ > 0) {
                Rectangle2D box = new Rectangle2D.Double(x, y, milliJ * perMilliJ, BAR_PX - 4);
                Color colour = Style.of(mode);
                g.setColor(colour);
                g.fill(box);
                // white edges keep neighbours apart in a grey print
                g.setColor(Style.PAPER);
                g.setStroke(Style.line(1.2));
                g.draw(box);
                inside(g, Figures.energy(milliJ / MILLI), box, Style.inkOn(colour), letters);
                x += milliJ * perMilliJ;
            }
        }
    }

    private static void inside(Graphics2D g, String words, Rectangle2D box, Color ink, Lettering letters) {
        Font font = Style.type(12);
        g.setFont(font);
        if (g.getFontMetrics().stringWidth(words) + 8 < box.getWidth()) {
            letters.middle(words, box.getCenterX(), box.getCenterY() + 4.5, font, ink);
        }
    }

    private void key(Graphics2D g, double topPx, Lettering letters) {
        double y = topPx + BETWEEN_PX / 2;
        for (List<LocomotorMode> line : keyLines()) {
            double x = LEFT_PX;
            for (LocomotorMode mode : line) {
                Rectangle2D box = new Rectangle2D.Double(x, y, BOX_PX, BOX_PX);
                g.setColor(Style.of(mode));
                g.fill(box);
                letters.from(PartText.doing(mode), x + BOX_PX + 6, y + 12, Style.type(13), Style.INK);
                x += (WIDTH_PX - LEFT_PX) / 3;
            }
            y += KEY_LINE_PX;
        }
    }

    /** Three parts in a line. */
    private List<List<LocomotorMode>> keyLines() {
        List<List<LocomotorMode>> lines = new ArrayList<>();
        for (int i = 0; i < modes.size(); i += 3) {
            lines.add(modes.subList(i, Math.min(i + 3, modes.size())));
        }
        return lines;
    }

    private static List<String> lines(String label) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : label.split(" ", -1)) {
            if (line.length() > 0 && line.length() + word.length() + 1 > LINE_LETTERS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private DataTable table() {
        return new DataTable(
                List.of("what", "way", "energy"),
                rows.stream()
                        .map(row -> List.of(
                                row.heading,
                                row.label,
                                row.energy.map(EnergyText::sum).orElse("no way")))
                        .toList());
    }
}
