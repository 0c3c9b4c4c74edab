package cradlewright.analysis.standing;

import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.pad.CorkPad;
import java.util.Optional;

/** How much a support gives way; values that nobody measured are named as assumed. Common practice, no source, unless stated. */
public final class Compliances {

    /** Steel on steel with paint in between, m/N. */
    public static final double BARE_STEEL = 1e-8;
    /** A thin soft pad that nobody described, m/N. */
    public static final double UNKNOWN_PAD = 1e-7;
    /** A strap with its eyes, m/N. */
    static final double UNKNOWN_STRAP = 5e-6;
    /** A castor with its fork and the plate above it, m/N. */
    public static final double UNKNOWN_CASTOR = 5e-7;
    /** An arm of a two-post lift at its pad, m/N. */
    static final double UNKNOWN_ARM = 3e-6;

    private Compliances() {
    }

    /** A compliance and whether it is only assumed. */
    record Compliance(double value, boolean assumed) {

        /** Returns the compliance of two parts in line. */
        Compliance plus(Compliance other) {
            return new Compliance(value + other.value, assumed || other.assumed);
        }
    }

    /** Returns the compliance of a pad from its stiffness, or its size and modulus; assumed when these are missing. */
    static Compliance ofPad(StockFacts.Pad pad) {
        if (pad.stiffness().isPresent()) {
            return new Compliance(1 / pad.stiffness().get().si(), false);
        }
        if (pad.length().isPresent() && pad.width().isPresent() && pad.thickness().isPresent()) {
            double area = pad.length().get().si() * pad.width().get().si();
            double thickness = pad.thickness().get().si();
            if (pad.modulus().isPresent()) {
                return new Compliance(thickness / (area * pad.modulus().get().si()), false);
            }
            if (pad.material() == StockFacts.Material.CORK) {
                return new Compliance(thickness / (area * CorkPad.MODULUS), true);
            }
        }
        return new Compliance(UNKNOWN_PAD, true);
    }

    /** Returns one over a stiffness, or what is assumed. */
    static Compliance ofStiffness(Optional<Value> stiffness, double assumed) {
        return stiffness.map(k -> new Compliance(1 / k.si(), false)).orElseGet(() -> new Compliance(assumed, true));
    }
}
