package cradlewright.analysis.testshop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.run.ProvenKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The answers of one check, with what to do tried on changed records by this check alone; whatever the check throws comes through.
 *
 * @param check the check
 * @param subject what it is asked about
 */
record Asked(Check check, Subject subject) implements Key<List<Finding>> {

    @Override
    public List<Finding> compute(Reader reader) {
        return check.examine(subject, reader);
    }

    /** Asks in a shop; each remedy that is said to mend is done in the records and the check asked anew, which must answer as claimed. */
    List<Finding> in(ShopSnapshot shop) {
        Engine engine = new Engine();
        engine.update(shop);
        List<Finding> findings = engine.read(this, Progress.NONE);
        if (findings.stream().flatMap(finding -> finding.remedies().stream()).noneMatch(remedy -> remedy.trial().isPresent())) {
            return findings;
        }
        List<Finding> proven = engine.read(new ProvenKey(new CheckCatalogue(List.of(check)), subject), Progress.NONE);
        for (int i = 0; i < findings.size(); i++) {
            for (Remedy remedy : proven.get(i).remedies()) {
                if (remedy.proof() == Remedy.Proof.MENDS) {
                    Trial trial = findings.get(i).remedies().stream().filter(raw -> raw.words().equals(remedy.words())).findFirst()
                            .flatMap(Remedy::trial).orElseThrow();
                    assertEquals(remedy.after().orElseThrow(), done(shop, trial, findings.get(i), findings), () -> "done: "
                            + remedy.words());
                }
            }
        }
        return proven;
    }

    /** Answers in a shop that starts with the changed records: nothing of it is taken over from before. */
    private Verdict done(ShopSnapshot shop, Trial trial, Finding finding, List<Finding> before) {
        Map<String, Fact> facts = new LinkedHashMap<>(shop.facts());
        trial.change().facts().forEach(fact -> facts.put(fact.id(), fact));
        Engine anew = new Engine();
        anew.update(new ShopSnapshot(shop.number() + 1, shop.name(), trial.change().settings().orElse(shop.settings()), shop.today(),
                facts));
        List<Finding> after = anew.read(this, Progress.NONE);
        boolean same = after.stream().anyMatch(other -> other.objectId().equals(finding.objectId()) && !trial.ends(other));
        // Where the object has gone, what came new counts: a stand in the place of another.
        return Verdict.worst(after.stream().filter(other -> !trial.ends(other)).filter(other -> same
                ? other.objectId().equals(finding.objectId()) : before.stream().noneMatch(old -> old.objectId().equals(other.objectId())))
                .map(Finding::verdict).toList());
    }
}
