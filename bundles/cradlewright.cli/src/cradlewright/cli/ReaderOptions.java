package cradlewright.cli;

import cradlewright.report.UnitSystem;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** For which day and in which units somebody wants answers. */
final class ReaderOptions {

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", converter = Day.class,
            description = "the day the answers are for; today if left out")
    private LocalDate day;

    @Option(names = "--units", defaultValue = "metric", converter = Units.class, paramLabel = "UNITS",
            description = "metric or inch (default: ${DEFAULT-VALUE})")
    private UnitSystem units;

    /** Returns the day. */
    LocalDate day() {
        return day == null ? LocalDate.now() : day;
    }

    /** Returns the units. */
    UnitSystem units() {
        return units;
    }

    /** Reads a day. */
    static final class Day implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException("'" + text + "' is no day: write it as 2026-03-31");
            }
        }
    }

    /** Reads a unit system. */
    static final class Units implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String text) {
            return switch (text.toLowerCase(Locale.ROOT)) {
                case "metric" -> UnitSystem.METRIC;
                case "inch" -> UnitSystem.INCH;
                default -> throw new TypeConversionException("'" + text + "' is no system of units: write metric or inch");
            };
        }
    }
}
