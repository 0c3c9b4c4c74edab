package cradlewright.cli;

import cradlewright.report.UnitSystem;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** In which units somebody wants answers. */
final class UnitOption {

    @Option(names = "--units", defaultValue = "metric", converter = Units.class, paramLabel = "UNITS",
            description = "metric or inch (default: ${DEFAULT-VALUE})")
    private UnitSystem units;

    /** Returns the units. */
    UnitSystem units() {
        return units;
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
