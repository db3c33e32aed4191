package rimeward.sim.app;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A time by the scenario's clock as people write it: a date, or a date and a time. */
final class PlaceTime implements ITypeConverter<LocalDateTime> {
    @Override
    public LocalDateTime convert(String text) {
        try {
            return text.contains("T")
                    ? LocalDateTime.parse(text)
                    : LocalDate.parse(text).atStartOfDay();
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("\"" + text
                    + "\" is no time; write a date, as 2014-01-26, or a date and a time, as 2014-01-26T12:00");
        }
    }
}
