package limbway.reports.command;

import java.time.DateTimeException;
import java.time.LocalDate;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a date as YYYY-MM-DD, in years for which the sun's position is known well. */
final class CalendarDate implements ITypeConverter<LocalDate> {

    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2200;

    @Override
    public LocalDate convert(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
                return date;
            }
        } catch (DateTimeException e) {
            throw refused();
        }
        throw refused();
    }

    private static TypeConversionException refused() {
        return new TypeConversionException("a date as YYYY-MM-DD, from 1900-01-01 to 2200-12-31");
    }
}
