package limbway.model.shade;

import java.time.MonthDay;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;

/** What the search must know of the audit: the points that are looked at, what lights them, and the verdict on a layout. */
interface RoofJudge {

    /** Sample points of each platform of the year, in its order. */
    List<List<Point>> points();

    /** Whether more of the sun reaches a point than the rule lets pass. */
    boolean isLit(Point point, Point towardsSun, MonthDay day);

    /** The whole audit of a layout with a roof in it. */
    ShadeYear audit(Enclosure mended);
}
