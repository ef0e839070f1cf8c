package limbway.reports.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Whether something takes part. */
enum OnOff {
    /** It does. */
    ON,
    /** It does not. */
    OFF;

    /** Reads on or off. */
    static final class Reader implements ITypeConverter<OnOff> {

        @Override
        public OnOff convert(String text) {
            return switch (text) {
                case "on" -> ON;
                case "off" -> OFF;
                default -> throw new TypeConversionException("on or off");
            };
        }
    }
}
