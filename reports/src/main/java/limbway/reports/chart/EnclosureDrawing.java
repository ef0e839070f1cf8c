package limbway.reports.chart;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.reports.measure.Stretch;
import limbway.reports.words.Figures;

/** Draws an enclosure from above and from the south, with the travel of a run over it. */
public final class EnclosureDrawing {

    /** With more supports than this their names would cover the drawing. */
    private static final int MOST_NAMED_SUPPORTS = 60;

    private static final double NEAR_PX = 22;
    private static final double FAR_PX = 70;

    private final Enclosure enclosure;
    private final Frame frame;
    private final TravelLines travel;
    private final boolean withTravel;
    private final String proposed;
    private final Optional<TripMarks> trip;

    private EnclosureDrawing(Enclosure enclosure, List<Stretch> stretches, String proposed) {
        this(enclosure, stretches, proposed, Optional.empty());
    }

    private EnclosureDrawing(Enclosure enclosure, List<Stretch> stretches, String proposed, Optional<TripMarks> trip) {
        this.proposed = proposed;
        this.trip = trip;
        this.enclosure = enclosure;
        this.frame = Frame.of(enclosure);
        this.travel = new TravelLines(stretches);
        this.withTravel = !stretches.isEmpty() && proposed.isEmpty() && trip.isEmpty();
    }

    /**
     * Plan and side view.
     *
     * @param id file name without ending
     * @param title what is shown
     * @param enclosure what stands there
     * @param stretches travel to draw over it; may be empty
     * @return the picture
     */
    public static Picture of(String id, String title, Enclosure enclosure, List<Stretch> stretches) {
        EnclosureDrawing drawing = new EnclosureDrawing(enclosure, stretches, "");
        int height = (int) Math.ceil(drawing.frame.bottomPx()) + 34 + Key.heightPx(enclosure);
        return new Picture(
                id,
                title,
                "The enclosure from above with north on top, and below it from the south. Supports and decks are grey, "
                        + "lighter where higher. Travel off the ground is a solid line, on the ground a dashed one, "
                        + "broader where it is travelled more often." + alsoDrawn(enclosure),
                Style.WIDTH_PX,
                height,
                drawing::paint,
                drawing.table());
    }

    /**
     * Plan and side view with something that could be added.
     *
     * @param id file name without ending
     * @param title what is shown
     * @param enclosure what stands there, the additions among it
     * @param lines the additions, drawn as broad lines
     * @param words what they are, for the key
     * @param table the numbers behind the picture
     * @return the picture
     */
    public static Picture proposed(
            String id, String title, Enclosure enclosure, List<Segment> lines, String words, DataTable table) {
        List<Stretch> stretches = lines.stream()
                .map(line -> new Stretch(line.a(), line.b(), false, 1, line.lengthM()))
                .toList();
        EnclosureDrawing drawing = new EnclosureDrawing(enclosure, stretches, words);
        int height = (int) Math.ceil(drawing.frame.bottomPx()) + 34 + Key.heightPx(enclosure);
        return new Picture(
                id,
                title,
                "The enclosure from above with north on top, and below it from the south. What stands there is grey, lighter "
                        + "where higher; a broad solid line is " + words + "." + alsoDrawn(enclosure),
                Style.WIDTH_PX,
                height,
                drawing::paint,
                table);
    }

    /**
     * Plan and side view with the two ways of one trip.
     *
     * @param id file name without ending
     * @param title what is shown
     * @param enclosure what stands there
     * @param over the way over the ground, move by move; may be empty
     * @param off the way off the ground, move by move; may be empty
     * @param ends names of the place where the trip starts and of that where it ends; may be empty
     * @param table the numbers behind the picture
     * @return the picture
     */
    public static Picture trip(
            String id,
            String title,
            Enclosure enclosure,
            List<Segment> over,
            List<Segment> off,
            List<String> ends,
            DataTable table) {
        TripMarks marks = new TripMarks(over, off, ends);
        EnclosureDrawing drawing = new EnclosureDrawing(enclosure, List.of(), "", Optional.of(marks));
        int height = (int) Math.ceil(drawing.frame.bottomPx()) + 34 + Key.heightPx(enclosure);
        return new Picture(
                id,
                title,
                "The enclosure from above with north on top, and below it from the south. What stands there is grey, lighter "
                        + "where higher." + marks.words() + alsoDrawn(enclosure),
                Style.WIDTH_PX,
                height,
                drawing::paint,
                table);
    }

    private static String alsoDrawn(Enclosure enclosure) {
        List<String> words = KeySign.of(enclosure).stream().map(KeySign::words).toList();
        return words.isEmpty() ? "" : " Drawn too, with signs of their own: " + String.join(", ", words) + ".";
    }

    private void paint(Graphics2D g, Rectangle2D area) {
        Structure structure = new Structure(g, enclosure, frame);
        Key key = new Key(g, enclosure, frame);
        caption(g, "From above", Frame.PLAN_TOP_PX - 10);
        key.drawNorth(frame.xPx(frame.eastM()) - 24, Frame.PLAN_TOP_PX - 10);
        structure.drawPlan();
        travel.draw(g, frame, true);
        trip.ifPresent(marks -> marks.draw(g, frame, enclosure, true));
        Rectangle2D plan = new Rectangle2D.Double(
                0, Frame.PLAN_TOP_PX - 4, area.getWidth(), frame.planYPx(frame.southM()) - Frame.PLAN_TOP_PX + 8);
        drawNames(g, plan);
        caption(g, "From the south", frame.sideYPx(frame.topM()) - 18);
        structure.drawBackdrop();
        drawHeights(g);
        structure.drawSide();
        nameHeights(g);
        travel.draw(g, frame, false);
        trip.ifPresent(marks -> marks.draw(g, frame, enclosure, false));
        for (Resource resource : enclosure.resources()) {
            ResourceMark.draw(g, resource.kind(), frame.fromSide(resource.at()));
        }
        key.draw(frame.bottomPx() + 30, travel, withTravel);
        if (!proposed.isEmpty()) {
            key.drawProposed(frame.bottomPx() + 30, proposed, travel);
        }
        trip.ifPresent(marks -> marks.drawKey(g, Key.lastLinePx(frame.bottomPx() + 30, enclosure)));
    }

    private static void caption(Graphics2D g, String words, double y) {
        g.setColor(Style.INK);
        g.setFont(Style.strongType(13));
        g.drawString(words, (float) Frame.LEFT_PX, (float) y);
    }

    private void drawNames(Graphics2D g, Rectangle2D plan) {
        Labels labels = new Labels(g, plan);
        for (Resource resource : enclosure.resources()) {
            Point2D at = frame.inPlan(resource.at());
            ResourceMark.draw(g, resource.kind(), at);
            labels.keepFree(ResourceMark.box(at));
        }
        g.setColor(Style.INK);
        for (Resource resource : enclosure.resources()) {
            Point2D at = frame.inPlan(resource.at());
            labels.write(resource.id(), at.getX(), at.getY(), ResourceMark.RADIUS_PX, Style.strongType(12), FAR_PX);
        }
        g.setColor(Style.FAINT);
        if (enclosure.supports().size() <= MOST_NAMED_SUPPORTS) {
            for (Support support : enclosure.supports()) {
                Point2D at = frame.inPlan(support.axis().atLength(support.axis().lengthM() / 2));
                labels.write(support.id(), at.getX(), at.getY(), 2, Style.type(11), NEAR_PX);
            }
        }
        for (Platform platform : enclosure.platforms()) {
            Point2D at = frame.inPlan(platform.centre());
            labels.write(platform.id(), at.getX(), at.getY(), 6, Style.type(11), NEAR_PX);
        }
        for (Cover cover : enclosure.shading().covers()) {
            // by its first corner: its middle is over what animals use
            Point2D at = frame.inPlan(cover.facet().corners().get(0));
            labels.write(cover.id(), at.getX(), at.getY(), 2, Style.type(11), NEAR_PX);
        }
    }

    private void drawHeights(Graphics2D g) {
        double right = frame.xPx(frame.eastM());
        for (double zM = 0; zM <= frame.topM(); zM += stepM()) {
            double y = frame.sideYPx(zM);
            g.setColor(zM == 0 ? Style.INK : Style.GRID);
            g.setStroke(Style.line(zM == 0 ? 1.5 : 0.8));
            g.draw(new Line2D.Double(Frame.LEFT_PX, y, right, y));
        }
    }

    private void nameHeights(Graphics2D g) {
        g.setFont(Style.type(11));
        g.setColor(Style.INK);
        for (double zM = 0; zM <= frame.topM(); zM += stepM()) {
            String label = Figures.decimals(zM, 0) + " m";
            double left = Frame.LEFT_PX - 6 - g.getFontMetrics().stringWidth(label);
            g.drawString(label, (float) left, (float) (frame.sideYPx(zM) + 4));
        }
    }

    private double stepM() {
        return frame.topM() > 12 ? 10 : 2;
    }

    private DataTable table() {
        List<List<String>> rows = new ArrayList<>();
        for (Resource resource : enclosure.resources()) {
            Point at = resource.at();
            rows.add(List.of(
                    resource.id(),
                    resource.kind().word(),
                    Figures.metres(at.xM()),
                    Figures.metres(at.yM()),
                    Figures.metres(at.zM()),
                    resource.on().isEmpty() ? "by coordinates" : resource.on(),
                    Integer.toString(resource.stalls())));
        }
        return new DataTable(List.of("name", "kind", "east", "north", "height", "on", "at once"), rows);
    }
}
