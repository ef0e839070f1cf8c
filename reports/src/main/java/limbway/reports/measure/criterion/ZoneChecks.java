package limbway.reports.measure.criterion;

/** What the indices of zones ask of their numbers. */
final class ZoneChecks {

    private ZoneChecks() {}

    static void require(double[] used, double[] size) {
        if (used.length != size.length) {
            throw new IllegalArgumentException(
                    "zones: " + used.length + " uses, allowed as many as sizes, " + size.length);
        }
        for (int zone = 0; zone < used.length; zone++) {
            if (!(used[zone] >= 0 && used[zone] < Double.POSITIVE_INFINITY)
                    || !(size[zone] >= 0 && size[zone] < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("zones: zone " + (zone + 1) + " used " + used[zone] + ", size "
                        + size[zone] + ", allowed 0 or more");
            }
            if (used[zone] > 0 && size[zone] == 0) {
                throw new IllegalArgumentException(
                        "zones: zone " + (zone + 1) + " used " + used[zone] + ", allowed 0, because it has no size");
            }
        }
    }

    static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
