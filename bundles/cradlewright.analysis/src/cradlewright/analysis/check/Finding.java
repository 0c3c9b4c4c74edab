package cradlewright.analysis.check;

import cradlewright.mechanics.formula.Formula;
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
 * @param demand what is asked of the object, at its unfavourable end
 * @param capacity what it can give
 * @param ratedBy what the capacity is rated by and where that comes from
 * @param clause the clause that the answer follows
 * @param caution what stands beside the answer
 * @param missing what is missing, for CAN'T SAY
 * @param remedies what to do, best first
 * @param inputs the numbers that went in
 * @param formulas the formulas that were used
 */
public record Finding(String check, Subject subject, String objectId, String objectName, Verdict verdict, String words,
        String situation, Optional<Amount> demand, Optional<Amount> capacity, String ratedBy, String clause, String caution,
        List<String> missing, List<Remedy> remedies, List<Input> inputs, List<Formula> formulas) {

    /** Copies the lists; refuses a CAN'T SAY that does not tell what is missing. */
    public Finding {
        Objects.requireNonNull(verdict);
        missing = List.copyOf(missing);
        remedies = List.copyOf(remedies);
        inputs = List.copyOf(inputs);
        formulas = List.copyOf(formulas);
        if (words.isBlank()) {
            throw new IllegalArgumentException("a finding needs its reason: " + check);
        }
        if (verdict == Verdict.CANT_SAY && missing.isEmpty()) {
            throw new IllegalArgumentException("CAN'T SAY must tell what is missing: " + check + ", " + words);
        }
    }

    /** Returns demand over capacity, or nothing when either is missing or the capacity is zero. */
    public Optional<Double> use() {
        return demand.flatMap(d -> capacity.filter(c -> c.si() > 0).map(c -> d.si() / c.si()));
    }
}
