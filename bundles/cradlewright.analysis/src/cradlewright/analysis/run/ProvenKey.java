package cradlewright.analysis.run;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The findings of all checks about one subject, with what to do about STOP and TIGHT tried on changed records. Gravest findings come
 * first to their trials, of which there are at most {@link RemedyProof#MOST_TRIALS} for a subject.
 *
 * @param catalogue the checks in force
 * @param subject what they are asked about
 */
public record ProvenKey(CheckCatalogue catalogue, Subject subject) implements Key<List<Finding>> {

    @Override
    public List<Finding> compute(Reader reader) {
        List<Finding> findings = AfterKey.ask(catalogue, subject, reader);
        RemedyProof proof = new RemedyProof(catalogue, subject, reader);
        Map<Finding, Finding> proven = new IdentityHashMap<>();
        findings.stream().sorted(Comparator.comparing(Finding::verdict).reversed()).forEach(finding -> proven.put(finding,
                proof.of(finding)));
        return findings.stream().map(proven::get).toList();
    }
}
