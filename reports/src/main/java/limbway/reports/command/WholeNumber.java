package limbway.reports.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number from 1 to 2147483647. */
final class WholeNumber implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String text) {
        try {
            int number = Integer.parseInt(text);
            if (number >= 1) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw refused();
        }
        throw refused();
    }

    private static TypeConversionException refused() {
        return new TypeConversionException("a whole number from 1 to 2147483647");
    }
}
