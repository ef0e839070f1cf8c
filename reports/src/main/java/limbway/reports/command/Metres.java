package limbway.reports.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a height or length from 0 to 100 m. */
final class Metres implements ITypeConverter<Double> {

    private static final double MOST_M = 100;

    @Override
    public Double convert(String text) {
        try {
            double metres = Double.parseDouble(text);
            if (metres >= 0 && metres <= MOST_M) {
                return metres;
            }
        } catch (NumberFormatException e) {
            throw refused();
        }
        throw refused();
    }

    private static TypeConversionException refused() {
        return new TypeConversionException("a number of metres from 0 to 100");
    }
}
