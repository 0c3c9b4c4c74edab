package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.DollyCheck;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.tipping.SupportKind;
import cradlewright.mechanics.tipping.SupportPolygon;
import cradlewright.mechanics.tipping.TippingFormulas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Are there castors enough under the dolly, and is it known which? */
public final class CastorCountCheck extends DollyCheck {

    private static final int LEAST = 3;

    /** Creates the check. */
    public CastorCountCheck() {
        super(new CheckInfo("castor.count", "Are there castors enough, and is it known which?",
                "statics: three points that are not in one line",
                Cautions.CASTORS, List.of("the node that each castor is bolted to, with its place", "the type of each castor"),
                List.of(TippingFormulas.MARGIN)));
    }

    @Override
    protected List<Finding> examine(DollyFacts dolly, Subject subject, Reader reader) {
        if (dolly.castors().isEmpty() && dolly.feet().size() >= LEAST) {
            return List.of();
        }
        FindingBuilder finding = finding(subject, dolly.id(), dolly.name()).atLeast(Amount.ratio(LEAST),
                Amount.ratio(dolly.castors().size()), "number of castors");
        if (dolly.castors().size() < LEAST) {
            return List.of(finding.remedy(Remedy.advice("Fit a castor under each corner."))
                    .say(Verdict.STOP, "A dolly on fewer than three castors falls over."));
        }
        List<String> missing = new ArrayList<>();
        List<Vec3> places = new ArrayList<>();
        for (CastorFacts castor : dolly.castors()) {
            Optional<Vec3> at = castor.nodeId().flatMap(dolly::node).flatMap(NodeFacts::at);
            at.ifPresentOrElse(places::add, () -> missing.add("where " + castor.name()
                    + " is: the node it is bolted to, with its place"));
            if (castor.typeId().flatMap(id -> reader.read(new FactKey<>(CastorType.class, id))).isEmpty()) {
                missing.add("which type of castor " + castor.name() + " is: enter it in stock with what its maker states");
            }
        }
        if (places.size() == dolly.castors().size() && SupportPolygon.of(places).kind() != SupportKind.AREA) {
            return List.of(finding.remedy(Remedy.advice("Fit a castor beside the line of the others."))
                    .say(Verdict.STOP, "All castors stand in one line: the dolly falls over."));
        }
        return List.of(missing.isEmpty() ? finding.say(Verdict.HOLDS, "There are castors enough, and their types are known.")
                : finding.cantSay("Not everything about the castors is in the files.", missing));
    }
}
