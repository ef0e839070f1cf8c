package limbway.reports.measure;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that the audit of a design found.
 *
 * @param kind what kind of thing, one or two words joined by a hyphen
 * @param weight how much it matters
 * @param place names of the things concerned, or empty where it is the whole enclosure
 * @param body name of the body concerned, or empty where it is all of them
 * @param figure the number that decided, if there is one
 * @param unit its unit, or empty
 * @param text what was found, as a sentence without a full stop
 * @param mend what would mend it, likewise
 * @param shared what is the same for all bodies and places it may be found for, as a clause after these
 * @param limit what the body can do, if that decided
 */
public record Finding(
        String kind,
        Weight weight,
        String place,
        String body,
        OptionalDouble figure,
        String unit,
        String text,
        String mend,
        String shared,
        Optional<Limit> limit) {

    /**
     * How far a body's ability goes.
     *
     * @param metres the ability [m]
     * @param words the same in words, for example {@code reaches 1.5 m}
     */
    public record Limit(double metres, String words) {}

    /** A finding with a figure, told by itself. */
    static Finding alone(
            String kind, Weight weight, String place, double figure, String unit, String text, String mend) {
        return of(kind, weight, place, "", figure, unit, text, mend, text);
    }

    /** A finding with a figure that may be told together with those of other bodies and places. */
    static Finding of(
            String kind,
            Weight weight,
            String place,
            String body,
            double figure,
            String unit,
            String text,
            String mend,
            String shared) {
        return new Finding(
                kind, weight, place, body, OptionalDouble.of(figure), unit, text, mend, shared, Optional.empty());
    }
}
