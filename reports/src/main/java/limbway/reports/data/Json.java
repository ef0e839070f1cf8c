package limbway.reports.data;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;

import limbway.reports.words.Xml;
import limbway.sim.experiment.statistics.Interval;

/** Writes JSON with line feeds and two spaces, keys in the order they were put. */
public final class Json {

    private Json() {}

    /**
     * Text of a value.
     *
     * @param value maps, lists, texts, numbers, truth values and null
     * @return JSON, ended by a line feed
     * @throws IllegalArgumentException if the value holds something else
     */
    public static String text(Object value) {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(value) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("answer cannot be written as JSON", e);
        }
    }

    /**
     * Text of a value on one line, safe to stand within a script element of a page; like all text of a page it does not turn the
     * direction of writing.
     *
     * @param value maps, lists, texts, numbers, truth values and null
     * @return JSON in which every {@code <} is written as an escape, so that no markup can begin in it
     * @throws IllegalArgumentException if the value holds something else
     */
    public static String embedded(Object value) {
        try {
            return Xml.shown(new ObjectMapper().writeValueAsString(value)).replace("<", "\\u003c");
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("answer cannot be written as JSON", e);
        }
    }

    /**
     * An interval as an object.
     *
     * @param interval a mean with its interval
     * @return {@code mean}, {@code lo} and {@code hi}, the last two null with one replication
     */
    public static Map<String, Object> interval(Interval interval) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("mean", interval.mean());
        object.put("lo", orNull(interval.lo()));
        object.put("hi", orNull(interval.hi()));
        return object;
    }

    /**
     * A number that may be missing.
     *
     * @param value a number or nothing
     * @return the number or null
     */
    public static Double orNull(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }
}
