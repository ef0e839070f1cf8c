package limbway.model.explain.flip;

/** Measures as somebody would write them down. */
final class Steps {

    /** From this amount on, a centimetre more is less than two parts in a hundred [m]. */
    static final double COARSE_FROM_M = 0.6;

    static final double FINE_M = 0.001;
    static final double COARSE_M = 0.01;

    private Steps() {}

    static double centimetre(double metres) {
        return Math.rint(metres * 100) / 100;
    }

    static double millimetre(double metres) {
        return Math.rint(metres * 1000) / 1000;
    }
}
