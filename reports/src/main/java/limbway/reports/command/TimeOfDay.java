package limbway.reports.command;

import java.time.DateTimeException;
import java.time.LocalTime;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time of day as HH:MM. */
final class TimeOfDay implements ITypeConverter<LocalTime> {

    @Override
    public LocalTime convert(String text) {
        try {
            if (text.length() == "HH:MM".length()) {
                return LocalTime.parse(text);
            }
        } catch (DateTimeException e) {
            throw refused();
        }
        throw refused();
    }

    private static TypeConversionException refused() {
        return new TypeConversionException("a time of day as HH:MM, from 00:00 to 23:59");
    }
}
