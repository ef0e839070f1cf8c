package limbway.model.enclosure;

import java.time.MonthDay;
import java.util.Optional;

/**
 * How thick the leaves of a crown are, and when it carries them.
 *
 * @param leafAreaIndex area of leaves above one square metre of ground below the middle of the crown [m2/m2], above 0
 * @param season when it carries them; empty for an evergreen
 */
public record Foliage(double leafAreaIndex, Optional<Season> season) {

    /**
     * An evergreen of a usual thickness.
     *
     * @source Vose et al. (1995): 4.3 to 5.4 in four hardwood stands; a single tree was taken a little thinner (assumption)
     */
    public static final Foliage EVERGREEN = new Foliage(4, Optional.empty());

    /**
     * Checks the thickness.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Foliage {
        if (!(leafAreaIndex > 0)) {
            throw new IllegalArgumentException("foliage: leafAreaIndex = " + leafAreaIndex + ", allowed above 0");
        }
    }

    /**
     * Whether the leaves are on.
     *
     * @param day day of the year
     * @return true in the season, first and last day included, and always for an evergreen
     */
    public boolean isInLeaf(MonthDay day) {
        return season.isEmpty() || season.get().covers(day);
    }

    /**
     * The part of the year in which a tree carries leaves; it may reach over the turn of the year, as it does in the south.
     *
     * @param first first day in leaf
     * @param last last day in leaf
     */
    public record Season(MonthDay first, MonthDay last) {

        /**
         * Whether a day lies in it.
         *
         * @param day day of the year
         * @return true from the first to the last day
         */
        public boolean covers(MonthDay day) {
            boolean afterFirst = !day.isBefore(first);
            boolean beforeLast = !day.isAfter(last);
            return first.isAfter(last) ? afterFirst || beforeLast : afterFirst && beforeLast;
        }
    }
}
