package limbway.reports.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads on or off. */
final class OnOff implements ITypeConverter<Boolean> {

    @Override
    public Boolean convert(String text) {
        return switch (text) {
            case "on" -> true;
            case "off" -> false;
            default -> throw new TypeConversionException("on or off");
        };
    }
}
