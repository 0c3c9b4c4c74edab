package cradlewright.analysis.checks.tip;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.castor.SwivelLead;
import java.util.List;
import java.util.Optional;

/** The castors of a dolly with the lead of their swivels. */
final class Leads {

    private Leads() {
    }

    /** Returns what is missing: the lead of every castor that swivels. */
    static List<String> missing(DollyLoad load) {
        return load.wheels().stream().filter(wheel -> wheel.castor().swivel() && lead(wheel).isEmpty())
                .map(wheel -> wheel.type().map(CastorType::name).map(type -> "castor type " + type)
                        .orElse("type of castor " + wheel.castor().name()))
                .distinct().map(type -> "lead of the swivel, " + type
                        + ": distance from the swivel axis to the wheel axle, in plan").toList();
    }

    private static Optional<Value> lead(DollyLoad.Wheel wheel) {
        return wheel.type().flatMap(CastorType::lead);
    }

    /** Returns how far a wheel may stand off its swivel axis, m; zero for a fixed castor. */
    static double of(DollyLoad.Wheel wheel) {
        return wheel.castor().swivel() ? lead(wheel).map(Value::high).orElseThrow() : 0;
    }

    /** Returns the castors; throws NoSuchElementException when a lead is missing. */
    static List<SwivelLead.Castor> castors(DollyLoad load) {
        return load.wheels().stream().map(wheel -> new SwivelLead.Castor(wheel.at(), of(wheel))).toList();
    }

    /** Returns the screw feet, which do not swivel. */
    static List<SwivelLead.Castor> feet(DollyLoad load) {
        return load.feet().stream().map(at -> new SwivelLead.Castor(at, 0)).toList();
    }
}
