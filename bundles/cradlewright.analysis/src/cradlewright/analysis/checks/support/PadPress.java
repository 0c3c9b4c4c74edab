package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.pad.CorkPad;
import cradlewright.mechanics.pad.Pad;
import cradlewright.mechanics.pad.PadLimits;
import cradlewright.mechanics.pad.RubberPad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pad of the stock under a force.
 *
 * @param stress in Pa, if it has a limit
 * @param stressLimit in Pa
 * @param strain share of the thickness, if it has a limit
 * @param strainLimit share of the thickness
 * @param ownLimits whether a limit is the pad's own
 * @param missing what must be known first
 */
record PadPress(Optional<Double> stress, Optional<Double> stressLimit, Optional<Double> strain, Optional<Double> strainLimit,
        boolean ownLimits,
        List<String> missing) {

    /**
     * Share of the modulus of dense cork below which its limit of pressure is not taken: lighter cork gives way at a lower one, and is
     * judged by how far it is pressed together.
     */
    private static final double DENSE_SHARE = 0.75;

    static PadPress of(StockFacts.Pad pad, double force) {
        List<String> missing = new ArrayList<>();
        boolean cork = pad.material() == StockFacts.Material.CORK;
        boolean dense = cork && pad.modulus().filter(modulus -> modulus.low() >= DENSE_SHARE * CorkPad.MODULUS).isPresent();
        Optional<Double> stressLimit = pad.stressLimit().map(Value::low).or(() -> dense ? Optional.of(PadLimits.CORK.stress())
                : Optional.empty());
        Optional<Double> strainLimit = pad.strainLimit().map(Value::low).or(() -> cork ? Optional.of(PadLimits.CORK.strain())
                : Optional.empty());
        if (stressLimit.isEmpty() && strainLimit.isEmpty()) {
            missing.add("largest pressure of the pad " + pad.name() + ": ask its maker");
        }
        if (pad.length().isEmpty() || pad.width().isEmpty() || pad.thickness().isEmpty()) {
            missing.add("length, width and thickness of the pad " + pad.name() + ": measure them");
        }
        if (strainLimit.isPresent() && pad.stiffness().isEmpty() && pad.modulus().isEmpty()) {
            missing.add("stiffness of the pad " + pad.name() + ": press it under a known weight");
        }
        if (!missing.isEmpty()) {
            return new PadPress(Optional.empty(), stressLimit, Optional.empty(), strainLimit, false, missing);
        }
        Pad pressed = pad(pad);
        return new PadPress(stressLimit.map(limit -> pressed.stress(force)), stressLimit,
                strainLimit.map(limit -> pressed.strain(force)), strainLimit,
                pad.stressLimit().isPresent() || pad.strainLimit().isPresent(), List.of());
    }

    private static Pad pad(StockFacts.Pad pad) {
        double length = pad.length().orElseThrow().si();
        double width = pad.width().orElseThrow().si();
        double thickness = pad.thickness().orElseThrow().si();
        double area = length * width;
        if (pad.stiffness().isPresent()) {
            // A measured stiffness stands for whatever material it is: a linear pad of the same give.
            return new CorkPad(area, thickness, pad.stiffness().get().si() * thickness / area);
        }
        if (pad.material() == StockFacts.Material.RUBBER && pad.modulus().isPresent()) {
            return RubberPad.block(length, width, thickness, pad.modulus().get().si());
        }
        return new CorkPad(area, thickness, pad.modulus().map(Value::si).orElse(CorkPad.MODULUS));
    }

    private double stressUse() {
        return stress.map(s -> s / stressLimit.orElseThrow()).orElse(0.0);
    }

    private double strainUse() {
        return strain.map(s -> s / strainLimit.orElseThrow()).orElse(0.0);
    }

    private boolean byStress() {
        return stressUse() >= strainUse();
    }

    Amount demand() {
        return byStress() ? Amount.stress(stress.orElseThrow()) : Amount.ratio(strain.orElseThrow());
    }

    Amount capacity() {
        return byStress() ? Amount.stress(stressLimit.orElseThrow()) : Amount.ratio(strainLimit.orElseThrow());
    }

    String ratedBy() {
        return (byStress() ? "largest pressure" : "largest share of the thickness") + (ownLimits ? " of this pad"
                : " of cork, common practice, no source");
    }

    Verdict verdict(double tightMargin) {
        return Verdict.of(demand().si(), capacity().si(), tightMargin);
    }
}
