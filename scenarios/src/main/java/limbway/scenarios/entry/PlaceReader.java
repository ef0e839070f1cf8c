package limbway.scenarios.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.geometry.Point;
import limbway.scenarios.entry.PlaceWords.Along;
import limbway.scenarios.entry.PlaceWords.Coordinates;
import limbway.scenarios.entry.PlaceWords.Offset;
import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.entry.PlaceWords.Share;
import limbway.scenarios.entry.PlaceWords.Spot;
import limbway.scenarios.entry.PlaceWords.Whole;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads where something is. */
final class PlaceReader {

    private static final String ALLOWED =
            "[x, y, z], or words such as: mast-1 at 6.5, mast-1 top, rope-1 middle, rope-1 at 50 %, deck-1";
    static final List<Quantity> XYZ = List.of(Quantity.POSITION, Quantity.POSITION, Quantity.ELEVATION);

    /** Words for parts of a support; the foot of a pole is its start. */
    private static final Map<String, Spot> SPOTS = Map.of(
            "", new Whole(),
            "top", new Share(1),
            "end", new Share(1),
            "middle", new Share(0.5),
            "foot", new Share(0),
            "start", new Share(0));

    private final Problems problems;
    private final Values values;

    PlaceReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** Reads coordinates or words. */
    Optional<PlaceWords> anywhere(Node node, String what) {
        return anywhere(node, what, 3);
    }

    /** The same where {@code least} coordinates are enough. */
    Optional<PlaceWords> anywhere(Node node, String what, int least) {
        return node instanceof ListNode
                ? coordinates(node, what, least).map(PlaceWords.class::cast)
                : values.words(node, what, ALLOWED).flatMap(text -> onNamed(node.place(), text, what));
    }

    /** Reads [x, y, z]; where two numbers are enough, the place is on the ground without the third. */
    Optional<Coordinates> coordinates(Node node, String what, int least) {
        String example = least == 3 ? "[x, y, z] in metres; z is 0 on the ground" : "[x, y] or [x, y, z] in metres";
        return values.numbers(node, XYZ, least, what, example)
                .map(xyz -> new Coordinates(
                        node.place(), new Point(xyz[0], xyz[1], xyz.length > 2 ? xyz[2] : 0), xyz.length == 2));
    }

    /** Coordinates that never leave the reader, where none could be read. */
    static Coordinates standIn(Place place) {
        return new Coordinates(place, new Point(0, 0, 0), false);
    }

    private Optional<PlaceWords> onNamed(Place place, String text, String what) {
        int space = text.indexOf(' ');
        String id = space < 0 ? text : text.substring(0, space);
        String rest = space < 0 ? "" : text.substring(space).strip();
        if (!Fields.isId(id)) {
            return notUnderstood(place, text, what);
        }
        Optional<Spot> spot = rest.startsWith("at ")
                ? at(place, rest.substring(3).strip(), what)
                : Optional.ofNullable(SPOTS.get(rest)).or(() -> notUnderstood(place, text, what));
        return spot.map(where -> new OnNamed(place, id, where));
    }

    private Optional<Spot> at(Place place, String rest, String what) {
        if (rest.startsWith("[") && rest.endsWith("]")) {
            return offset(place, rest.substring(1, rest.length() - 1).split(",", -1), what);
        }
        boolean share = rest.endsWith("%");
        OptionalDouble value = values.number(place, rest, share ? Quantity.SHARE : Quantity.ALONG, what);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(share ? new Share(value.getAsDouble() / 100) : new Along(value.getAsDouble()));
    }

    private Optional<Spot> offset(Place place, String[] parts, String what) {
        if (parts.length != 2) {
            return notUnderstood(place, "at [" + String.join(",", parts) + "]", what);
        }
        OptionalDouble east = values.number(place, parts[0].strip(), Quantity.OFFSET, what);
        OptionalDouble north = values.number(place, parts[1].strip(), Quantity.OFFSET, what);
        return east.isPresent() && north.isPresent()
                ? Optional.of(new Offset(east.getAsDouble(), north.getAsDouble()))
                : Optional.empty();
    }

    private <T> Optional<T> notUnderstood(Place place, String text, String what) {
        problems.add(Problem.at(place, what + " is no place")
                .found(Wording.quote(text))
                .allowed(ALLOWED));
        return Optional.empty();
    }
}
