package limbway.reports.command;

/** Numbers of a placing that must lie in a range. */
final class PlaceNumber {

    private PlaceNumber() {}

    /** Distance between candidates. */
    static final class Spacing extends NumberInRange<Double> {

        Spacing() {
            super("a distance from 0.1 to 20, in metres");
        }

        @Override
        Double fitting(double number) {
            return number >= 0.1 && number <= 20 ? number : null;
        }
    }

    /** A weight. */
    static final class Load extends NumberInRange<Double> {

        Load() {
            super("a weight from 0 to 5000, in kilograms");
        }

        @Override
        Double fitting(double number) {
            return number >= 0 && number <= 5000 ? number : null;
        }
    }

    /** How sure a selection is. */
    static final class Confidence extends NumberInRange<Double> {

        Confidence() {
            super("a probability from 0.51 to 0.999, such as 0.95");
        }

        @Override
        Double fitting(double number) {
            return number >= 0.51 && number <= 0.999 ? number : null;
        }
    }

    /** A difference of shares that matters. */
    static final class Indifference extends NumberInRange<Double> {

        Indifference() {
            super("a difference of shares from 0.001 to 0.5, such as 0.02 for two points");
        }

        @Override
        Double fitting(double number) {
            return number >= 0.001 && number <= 0.5 ? number : null;
        }
    }

    /** Repetitions of which spreads are taken. */
    static final class FirstStage extends NumberInRange<Integer> {

        FirstStage() {
            super("a whole number from 2 to 10000");
        }

        @Override
        Integer fitting(double number) {
            return number >= 2 && number <= 10_000 && number == Math.rint(number) ? (Integer) (int) number : null;
        }
    }

    /** Repetitions in all. */
    static final class Budget extends NumberInRange<Integer> {

        Budget() {
            super("a whole number from 2 to 900000");
        }

        @Override
        Integer fitting(double number) {
            return number >= 2 && number <= 900_000 && number == Math.rint(number) ? (Integer) (int) number : null;
        }
    }
}
