package cradlewright.analysis.check;

import cradlewright.mechanics.formula.Formula;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One answer. Built with {@link FindingBuilder}.
 *
 * @param check id of the check
 * @param subject what was asked about
 * @param objectId the object that the answer points at
 * @param objectName what people call that object
 * @param verdict the answer
 * @param words the reason in one or two sentences of shop words
 * @param situation what was going on, in words
 * @param demand what is asked of the object, at its unfavourable end; the least that is wanted when {@code atLeast}
 * @param capacity what it can give; what it has when {@code atLeast}
 * @param atLeast whether the two read "found so much, at least so much wanted" rather than "asked so much, can give so much"
 * @param ratedBy what the capacity is rated by and where that comes from
 * @param clause the clause that the answer follows
 * @param caution what stands beside the answer
 * @param missing what is missing, for CAN'T SAY; empty where nothing is missing but no rule reaches so far
 * @param remedies what to do, best first
 * @param inputs the numbers that went in
 * @param formulas the formulas that were used
 */
public record Finding(String check, Subject subject, String objectId, String objectName, Verdict verdict, String words,
        String situation, Optional<Amount> demand, Optional<Amount> capacity, boolean atLeast, String ratedBy, String clause,
        String caution, List<String> missing, List<Remedy> remedies, List<Input> inputs, List<Formula> formulas) {

    /** Copies the lists; refuses a CAN'T SAY that tells neither what is missing nor what to do. */
    public Finding {
        Objects.requireNonNull(verdict);
        missing = List.copyOf(missing);
        remedies = List.copyOf(remedies);
        inputs = List.copyOf(inputs);
        formulas = List.copyOf(formulas);
        if (words.isBlank()) {
            throw new IllegalArgumentException("a finding needs its reason: " + check);
        }
        if (verdict == Verdict.CANT_SAY && missing.isEmpty() && remedies.isEmpty()) {
            throw new IllegalArgumentException("CAN'T SAY must tell what is missing or what to do: " + check + ", " + words);
        }
    }

    /** Returns this finding with other things to do. */
    public Finding withRemedies(List<Remedy> other) {
        return new Finding(check, subject, objectId, objectName, verdict, words, situation, demand, capacity, atLeast, ratedBy, clause,
                caution, missing, other, inputs, formulas);
    }

    /** Returns this finding with one more number that went in. */
    public Finding withInput(Input more) {
        List<Input> all = new ArrayList<>(inputs);
        all.add(more);
        return new Finding(check, subject, objectId, objectName, verdict, words, situation, demand, capacity, atLeast, ratedBy, clause,
                caution, missing, remedies, all, formulas);
    }

    /** Returns demand over capacity, or nothing when either is missing or the capacity is zero. */
    public Optional<Double> use() {
        return demand.flatMap(d -> capacity.filter(c -> c.si() > 0).map(c -> d.si() / c.si()));
    }
}
