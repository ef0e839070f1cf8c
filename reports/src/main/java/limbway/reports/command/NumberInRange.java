package limbway.reports.command;

import java.util.Arrays;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a number that must lie in a range or be one of a few. */
abstract class NumberInRange<T> implements ITypeConverter<T> {

    private final String allowed;

    NumberInRange(String allowed) {
        this.allowed = allowed;
    }

    /** The number, or null where it does not fit. */
    abstract T fitting(double number);

    @Override
    public T convert(String text) {
        T value = null;
        try {
            value = fitting(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            throw refused();
        }
        if (value == null) {
            throw refused();
        }
        return value;
    }

    private TypeConversionException refused() {
        return new TypeConversionException(allowed);
    }

    /** A share of a platform: more than nothing. */
    static final class Share extends NumberInRange<Double> {

        Share() {
            super("a percentage from 1 to 100, such as 75");
        }

        @Override
        Double fitting(double number) {
            return number >= 1 && number <= 100 ? number / 100 : null;
        }
    }

    /** How well something is to be known: a percentage, with or without its sign. */
    static final class Precision extends NumberInRange<Double> {

        Precision() {
            super("a percentage from 0.1 to 50, such as 2");
        }

        @Override
        public Double convert(String text) {
            return super.convert(text.replaceFirst("\\s*%$", ""));
        }

        @Override
        Double fitting(double number) {
            return number >= 0.1 && number <= 50 ? number / 100 : null;
        }
    }

    /** A share of the sunlight: less than all. */
    static final class Beam extends NumberInRange<Double> {

        Beam() {
            super("a percentage from 0 to 99, such as 30");
        }

        @Override
        Double fitting(double number) {
            return number >= 0 && number <= 99 ? number / 100 : null;
        }
    }

    /** Height of the sun. */
    static final class Height extends NumberInRange<Double> {

        Height() {
            super("an angle from 0 to 89, in degrees");
        }

        @Override
        Double fitting(double number) {
            return number >= 0 && number <= 89 ? number : null;
        }
    }

    /** A year for which the sun's position is known well. */
    static final class Year extends NumberInRange<Integer> {

        Year() {
            super("a year from 1900 to 2200");
        }

        @Override
        Integer fitting(double number) {
            return number >= 1900 && number <= 2200 && number == Math.rint(number) ? (Integer) (int) number : null;
        }
    }

    /** Days before the days that count. */
    static final class WarmUp extends NumberInRange<Integer> {

        WarmUp() {
            super("a whole number of days from 0 to 366");
        }

        @Override
        Integer fitting(double number) {
            return number >= 0 && number <= 366 && number == Math.rint(number) ? (Integer) (int) number : null;
        }
    }

    /** Minutes into which an hour can be divided. */
    static final class Step extends NumberInRange<Integer> {

        private static final int[] STEPS = {1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30, 60};

        Step() {
            super("minutes that divide an hour: 1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30 or 60");
        }

        @Override
        Integer fitting(double number) {
            return Arrays.stream(STEPS).anyMatch(step -> step == number) ? (Integer) (int) number : null;
        }
    }
}
