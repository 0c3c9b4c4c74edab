package cradlewright.cli;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.CellReading;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.report.text.WeighingReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Weighs something from the readings of scales, without any file. */
@Command(name = "weigh", mixinStandardHelpOptions = true,
        description = {"What does it weigh and where is its balance point? From what scales show under something that stands or hangs "
                + "level.",
            "For example: weigh \"860 -470 = 47.6\" \"860 470 = 47.2\" \"3380 -460 = 43.3\" \"3380 460 = 42.9\""})
final class WeighVerb implements Callable<Integer> {

    /** Two standard uncertainties of a reading, as a share of it, when nobody says: common practice, no source. */
    private static final double SCALE_SHARE = 0.02;
    private static final double COVERAGE = 2;
    /** What is more than that is a slip of the pen; the same as in files. */
    private static final double MOST_KILOGRAMS = 1e5;
    private static final double MOST_METRES = 1e3;
    private static final String SHAPE = "write it as \"860 -470 = 47.6 kg\": back, right, what the scale shows";

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0..*", arity = "1..*", paramLabel = "READING",
            description = {"\"BACK RIGHT = MASS\": how far behind the marks' zero and to the right (left: minus) the scale touches, and "
                    + "what it "
                + "shows; bare numbers are mm and kg, or in and lb with --units inch"})
    private List<String> readings;

    @Option(names = "--scales", paramLabel = "MASS",
            description = "what one scale may be off by, 19 times in 20; 2 %% of what it shows if left out")
    private String scales;

    @Option(names = "--places", paramLabel = "LENGTH", defaultValue = "10 mm",
            description = "what one place may be off by, 19 times in 20 (default: ${DEFAULT-VALUE})")
    private String places;

    @Mixin
    private UnitOption units;

    @Override
    public Integer call() {
        double place = typed(places, Dimension.LENGTH, lengthUnit(), "--places") / COVERAGE;
        List<CellReading> cells = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            cells.add(cell(readings.get(i), i + 1, place));
        }
        if (cells.stream().mapToDouble(CellReading::mass).sum() <= 0) {
            throw new BadInputException("all scales show nothing: enter what they show with the weight on them");
        }
        spec.commandLine().getOut().print(new WeighingReport(units.units()).write(cells));
        return ExitCode.HELD;
    }

    private CellReading cell(String text, int number, double place) {
        String what = "reading " + number + " \"" + text + "\"";
        String[] sides = text.split("=", -1);
        String[] at = sides[0].strip().split("\\s+");
        if (sides.length != 2 || at.length != 2) {
            throw new BadInputException(what + ": " + SHAPE);
        }
        double shown = typed(sides[1].strip(), Dimension.MASS, massUnit(), what);
        if (shown < 0) {
            throw new BadInputException(what + ": a scale cannot show less than nothing; set it to zero unloaded and read it again");
        }
        double off = scales == null ? SCALE_SHARE * shown : typed(scales, Dimension.MASS, massUnit(), "--scales");
        if (!(off > 0) && shown > 0) {
            throw new BadInputException("--scales " + scales + ": no scale is exact; enter more than zero");
        }
        Vec3 touch = new Vec3(typed(at[0], Dimension.LENGTH, lengthUnit(), what), typed(at[1], Dimension.LENGTH, lengthUnit(), what), 0);
        return new CellReading(touch, shown, Math.max(off / COVERAGE, Double.MIN_NORMAL), place);
    }

    private Unit massUnit() {
        return units.units() == UnitSystem.METRIC ? Unit.KILOGRAM : Unit.POUND;
    }

    private Unit lengthUnit() {
        return units.units() == UnitSystem.METRIC ? Unit.MILLIMETRE : Unit.INCH;
    }

    private static double typed(String text, Dimension dimension, Unit unit, String what) {
        try {
            double si = Measured.parseTyped(text, dimension, unit, Locale.ROOT).si();
            if (Math.abs(si) > (dimension == Dimension.MASS ? MOST_KILOGRAMS : MOST_METRES)) {
                throw new BadInputException(what + ": \"" + text + "\" is beyond anything in a shop; check digits, exponent and unit");
            }
            return si;
        } catch (QuantityFormatException e) {
            throw new BadInputException(what + ": " + e.getMessage());
        }
    }
}
