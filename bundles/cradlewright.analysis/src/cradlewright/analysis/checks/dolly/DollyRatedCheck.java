package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.InUseElsewhereKey;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Does the plate of a bought dolly allow what stands on it? */
public final class DollyRatedCheck extends VisitCheck {

    /** Creates the check. */
    public DollyRatedCheck() {
        super(new CheckInfo("dolly.rated", "Does the plate of the dolly allow what stands on it?", "plate of the maker",
                Cautions.SUPPORTS,
                List.of("rated load on the plate of the dolly", "mass of what is carried"), List.of()));
    }

    /** A dolly of the shop's own make with a plate is held to it as well. */
    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<DollyFacts> dolly = standing.dolly()
                .filter(found -> found.build() == DollyFacts.Build.BOUGHT || found.ratedLoad().isPresent());
        return dolly.map(found -> List.of(judge(found, standing, subject, reader))).orElse(List.of());
    }

    private Finding judge(DollyFacts dolly, Standing standing, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, dolly.id(), dolly.name()).situation("at rest");
        Weight weight = reader.read(new WeightKey(standing.car().id(), standing.visit().id()));
        Optional<EstimatedBalance> carried = weight.estimate();
        List<String> missing = new ArrayList<>();
        weight.missing().forEach(part -> missing.add(part + " of a part that is on"));
        if (carried.isEmpty() && missing.isEmpty()) {
            missing.add("the mass of what is carried");
        }
        if (dolly.ratedLoad().filter(rated -> rated.low() > 0).isEmpty()) {
            missing.add("rated load of " + dolly.name() + ": read it off its plate");
        }
        if (!missing.isEmpty()) {
            return finding.cantSay("Whether the plate allows it cannot be told.", missing);
        }
        double listed = carried.orElseThrow().balance().mass();
        double high = listed + carried.get().expanded(Quantity.MASS);
        Value rated = dolly.ratedLoad().orElseThrow();
        Stated.mass(rated).against(finding.input("carries, masses as listed", Amount.mass(listed), "sum of the parts that are on"), high,
                "rated load of the dolly");
        double margin = settings(reader).tightMargin();
        Verdict verdict = Verdict.of(high, rated.low(), margin);
        if (verdict == Verdict.STOP) {
            another(dolly, high, margin, standing, reader).ifPresent(finding::remedy);
            finding.remedy(Remedy.advice("Take parts off before it goes on this dolly."));
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "It carries more than its plate allows."
                : "Its plate allows what it carries.");
    }

    private static Optional<Remedy> another(DollyFacts dolly, double high, double margin, Standing standing, Reader reader) {
        Set<String> elsewhere = InUseElsewhereKey.during(standing, reader);
        for (String id : reader.read(new IdsKey<>(DollyFacts.class))) {
            Optional<DollyFacts> other = reader.read(new FactKey<>(DollyFacts.class, id))
                    .filter(found -> !id.equals(dolly.id()) && !elsewhere.contains(id));
            Optional<Value> rated = other.flatMap(DollyFacts::ratedLoad);
            Verdict after = rated.map(value -> Verdict.of(high, Math.max(0, value.low()), margin)).orElse(Verdict.STOP);
            if (after == Verdict.HOLDS || after == Verdict.TIGHT) {
                return Optional.of(Remedy.alone("Use " + other.orElseThrow().name() + " if the car fits it.", after));
            }
        }
        return Optional.empty();
    }
}
