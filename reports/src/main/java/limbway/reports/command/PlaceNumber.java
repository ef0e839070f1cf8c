package limbway.reports.command;

import java.math.BigDecimal;

/** Numbers of a placing that must lie in a range. */
final class PlaceNumber {

    private PlaceNumber() {}

    private static String withoutSign(String text) {
        return text.replaceFirst("\\s*%$", "");
    }

    /** Divided by a hundred without a rounding of its own, so that answers say 0.999 where 99.9 was asked for. */
    private static double share(double percent) {
        return BigDecimal.valueOf(percent).movePointLeft(2).doubleValue();
    }

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
            super("a percentage from 51 to 99.9, such as 95; a share such as 0.95 is not one");
        }

        @Override
        public Double convert(String text) {
            return super.convert(withoutSign(text));
        }

        @Override
        Double fitting(double number) {
            return number >= 51 && number <= 99.9 ? share(number) : null;
        }
    }

    /** A difference of shares that matters. */
    static final class Indifference extends NumberInRange<Double> {

        Indifference() {
            super("percentage points from 0.1 to 50, such as 2; a share such as 0.02 is not one");
        }

        @Override
        public Double convert(String text) {
            return super.convert(withoutSign(text));
        }

        @Override
        Double fitting(double number) {
            return number >= 0.1 && number <= 50 ? share(number) : null;
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
