package limbway.model.route;

import java.util.stream.IntStream;

/**
 * How many random cases a test goes through: some at every build, all with {@code -Dlimbway.all-cases=true}. The
 * seeds of the former are the first of the latter, so that a case found by the long run can be named in the short one.
 */
final class Cases {

    private Cases() {}

    static IntStream seeds(int usually, int all) {
        return IntStream.rangeClosed(1, Boolean.getBoolean("limbway.all-cases") ? all : usually);
    }
}
