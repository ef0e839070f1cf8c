package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.enclosure.Resource;
import limbway.model.geometry.Point;
import limbway.model.study.Variant;

/** Where people stand that look in, and the middle of the places where animals stop, to which they look. */
final class Viewpoints {

    /** Height of the eyes of a person who stands; common practice, no source. */
    private static final Point EYES_M = new Point(0, 0, 1.6);

    private Viewpoints() {}

    static List<Map<String, Object>> of(Variant layout) {
        Point middle = middle(layout.enclosure().resources());
        List<Map<String, Object>> found = new ArrayList<>();
        layout.keeping().viewpoints().forEach(v -> found.add(entry(v.id(), "visitor", v.at(), middle)));
        layout.keeping().staff().forEach(s -> found.add(entry(s.id(), "keeper", s.at().plus(EYES_M), middle)));
        return found;
    }

    private static Map<String, Object> entry(String name, String who, Point at, Point to) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("name", name);
        entry.put("who", who);
        entry.put("at", PlaceGrid.millimetres(at));
        entry.put("to", PlaceGrid.millimetres(to));
        return entry;
    }

    private static Point middle(List<Resource> resources) {
        Point sum = new Point(0, 0, 0);
        for (Resource resource : resources) {
            sum = sum.plus(resource.at());
        }
        return sum.times(1.0 / Math.max(1, resources.size()));
    }
}
