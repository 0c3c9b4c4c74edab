package cradlewright.cli;

import cradlewright.report.UnitSystem;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** For which day and in which units somebody wants answers. */
final class ReaderOptions {

    @Option(names = "--day", paramLabel = "YYYY-MM-DD", converter = Day.class,
            description = "the day the answers are for; today if left out")
    private LocalDate day;

    @Mixin
    private UnitOption units;

    /** Returns the day. */
    LocalDate day() {
        return day == null ? LocalDate.now() : day;
    }

    /** Returns the units. */
    UnitSystem units() {
        return units.units();
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
}
