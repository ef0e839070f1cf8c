package limbway.reports.words;

import java.math.BigDecimal;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.explain.flip.Change;
import limbway.model.explain.flip.EndExtended;
import limbway.model.explain.flip.EndRetied;
import limbway.model.explain.flip.LinkAdded;
import limbway.model.explain.flip.PlaceMoved;
import limbway.model.explain.flip.PoleMoved;
import limbway.model.explain.flip.Spot;
import limbway.model.explain.flip.Thinned;
import limbway.model.explain.flip.Tightened;
import limbway.model.geometry.Point;

/** Writes a change of a layout as the line of a scenario that makes it, to be put under {@code changes}. */
public final class ChangeLine {

    private static final double PERCENT = 100;

    private ChangeLine() {}

    /**
     * The line, without the dash of a list.
     *
     * @param change a change
     * @param enclosure the layout that it changes
     * @return a mapping in braces, for example <code>{move: hatch, on: mast-2 at 5.5}</code>
     */
    public static String of(Change change, Enclosure enclosure) {
        if (change instanceof LinkAdded link) {
            return "{add: {rope: " + link.id() + ", from: " + spot(link.from()) + ", to: " + spot(link.to())
                    + ", diameter: " + number(LinkAdded.DIAMETER_M) + "}}";
        } else if (change instanceof PlaceMoved place) {
            return "{move: " + place.resource() + ", on: " + spot(place.at()) + "}";
        } else if (change instanceof EndExtended end) {
            Point p = end.end();
            return "{move: " + end.support() + ", " + end(end.first()) + ": [" + number(p.xM()) + ", " + number(p.yM())
                    + ", " + number(p.zM()) + "]}";
        } else if (change instanceof PoleMoved pole) {
            return "{move: " + pole.pole() + ", at: [" + number(pole.place().xM()) + ", "
                    + number(pole.place().yM()) + "]}";
        } else if (change instanceof EndRetied tie) {
            return "{move: " + tie.support() + ", " + end(tie.first()) + ": " + tie.pole() + " at "
                    + number(tie.heightM()) + "}";
        } else if (change instanceof Tightened rope) {
            return "{alter: " + rope.rope() + ", sag: "
                    + number(Math.rint(rope.sagShare() * PERCENT * PERCENT) / PERCENT) + " %}";
        }
        return thinner((Thinned) change, enclosure);
    }

    /**
     * The line that puts a place at a point of its own, on nothing.
     *
     * @param resource name of the place
     * @param at where to
     * @return a mapping in braces, for example <code>{move: hatch, at: [28, 10, 0]}</code>
     */
    public static String placed(String resource, Point at) {
        return "{move: " + resource + ", at: [" + number(at.xM()) + ", " + number(at.yM()) + ", " + number(at.zM())
                + "]}";
    }

    /**
     * A place as a scenario writes it.
     *
     * @param spot a place on something that has a name
     * @return words, in quotation marks where they need them
     */
    static String spot(Spot spot) {
        if (spot instanceof Spot.OnDeck deck) {
            boolean middle = deck.eastM() == 0 && deck.northM() == 0;
            return middle
                    ? deck.on()
                    : "\"" + deck.on() + " at [" + number(deck.eastM()) + ", " + number(deck.northM()) + "]\"";
        }
        return spot.on() + " at "
                + number(spot instanceof Spot.AtHeight height ? height.heightM() : ((Spot.Along) spot).alongM());
    }

    private static String thinner(Thinned thin, Enclosure enclosure) {
        Support old = enclosure.supports().stream()
                .filter(one -> one.id().equals(thin.support()))
                .findFirst()
                .orElseThrow();
        String tip = old.tipDiameterM() == old.diameterM() ? "" : ", tip-diameter: " + number(thin.tipM(old));
        return "{alter: " + thin.support() + ", diameter: " + number(thin.diameterM()) + tip + "}";
    }

    private static String end(boolean first) {
        return first ? "from" : "to";
    }

    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
