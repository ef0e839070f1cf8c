package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.study.Animal;

/**
 * How each animal is told from the others, by colour and by mark.
 *
 * @source the colours: Okabe and Ito 2008, Color Universal Design, from memory, without yellow, which is hard to see on
 *     white, and with grey in its place
 */
final class Cast {

    private static final List<String> COLOURS =
            List.of("#0072b2", "#d55e00", "#009e73", "#cc79a7", "#e69f00", "#56b4e9", "#222222", "#7a7a7a");
    private static final List<String> MARKS = List.of("●", "▲", "■", "◆", "▼", "★", "✚", "⬟");

    private Cast() {}

    /** From the ninth animal on, colours come again with other marks. */
    static List<Map<String, Object>> of(List<Animal> animals) {
        List<Map<String, Object>> cast = new ArrayList<>();
        for (int i = 0; i < animals.size(); i++) {
            Map<String, Object> entry = new LinkedHashMap<>();
            entry.put("name", animals.get(i).name());
            entry.put("body", animals.get(i).body().name());
            entry.put("rgb", COLOURS.get(i % COLOURS.size()));
            entry.put("mark", MARKS.get((i + i / COLOURS.size()) % MARKS.size()));
            cast.add(entry);
        }
        return cast;
    }
}
