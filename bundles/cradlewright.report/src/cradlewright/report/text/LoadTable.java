package cradlewright.report.text;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.HookHang;
import cradlewright.analysis.load.HookHangKey;
import cradlewright.analysis.load.Loads;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import cradlewright.report.VisitNumbers;
import java.util.List;

/** What a car weighs as it stands, where its balance point lies, and what each support and castor carries at rest. */
public final class LoadTable {

    private final Reader reader;
    private final UnitSystem units;

    /** Makes a writer over the snapshot that is read. */
    public LoadTable(Reader reader, UnitSystem units) {
        this.reader = reader;
        this.units = units;
    }

    /** Returns the lines about a visit; nothing for other subjects and for what is away. */
    public String write(Subject subject) {
        return VisitNumbers.of(reader, subject).map(this::write).orElse("");
    }

    private String write(VisitNumbers numbers) {
        StringBuilder out = new StringBuilder();
        numbers.weight().estimate().ifPresent(estimate -> weight(out, estimate));
        Loads loads = numbers.loads();
        if (loads.found()) {
            out.append(String.format("  %-18s %10s %10s %10s   %s%n", "at rest", "carries", "least", "most",
                    anyway(numbers.standing().carrier()) + ", as listed"));
            boolean slack = reader.read(HookHangKey.of(numbers.standing())).filter(HookHang::slack).isPresent();
            if (slack) {
                loads.supports().forEach(carried -> slack(out, carried));
                out.append(Lines.wrap("  ", "More straps meet in the hook than hold it: who carries how much turns on their lengths, "
                        + "any one may hang slack, and what each may pull then stands where its tag is asked."));
            } else {
                rows(out, loads.supports());
            }
            rows(out, loads.castors());
            rows(out, loads.props());
        }
        return out.toString().replace("\r\n", "\n");
    }

    /** Returns under what the last column stays true: what gives under the car is not the same on a lift as on a floor. */
    static String anyway(CarrierKind carrier) {
        return switch (carrier) {
            case LIFT -> "however the arms give";
            case STRAPS -> "however the straps stretch";
            case CHASSIS -> "however the chassis gives";
            case DOLLY -> "however floor and dolly give";
            case STANDS, FLOOR, AWAY -> "however the floor gives";
        };
    }

    private void weight(StringBuilder out, EstimatedBalance estimate) {
        Vec3 at = estimate.balance().point();
        out.append(Lines.wrap("  ", "Weighs " + units.text(Amount.mass(estimate.balance().mass())) + ", give or take "
                + units.text(Amount.mass(estimate.expanded(Quantity.MASS))) + "; balance point " + BalanceWords.along(at.x(), units) + ", "
                + BalanceWords.across(at.y(), units) + ", " + length(at.z()) + " up, give or take "
                + length(estimate.expanded(Quantity.X)) + " along the car."));
    }

    private void slack(StringBuilder out, Carried c) {
        out.append(String.format("  %-18s %10s %10s %10s   %s%n", clip(c.name()), "not known", force(0), "not known", range(c)));
    }

    private void rows(StringBuilder out, List<Carried> carried) {
        for (Carried c : carried) {
            out.append(String.format("  %-18s %10s %10s %10s   %s%n", clip(c.name()), force(c.force()), force(c.low()), force(c.high()),
                    range(c)));
        }
    }

    private String range(Carried c) {
        return Double.isNaN(c.least()) ? "not known" : force(c.least()) + " to " + force(c.most());
    }

    private String force(double newtons) {
        return units.text(Amount.force(Math.rint(newtons)));
    }

    /** Whole millimetres: no balance point is known better. */
    private String length(double metres) {
        return units == UnitSystem.METRIC ? Math.round(1000 * metres) + " mm" : units.text(Amount.length(metres));
    }

    private static String clip(String name) {
        return name.length() <= 18 ? name : name.substring(0, 17) + "~";
    }
}
