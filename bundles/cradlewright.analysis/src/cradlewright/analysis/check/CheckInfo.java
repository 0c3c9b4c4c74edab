package cradlewright.analysis.check;

import cradlewright.mechanics.formula.Formula;
import java.util.List;
import java.util.Objects;

/**
 * What a check says about itself.
 *
 * @param id stable identifier {@code family.name}, never reused
 * @param title what it asks, in shop words
 * @param clause the standard's clause it follows, or {@code common practice, no source}
 * @param caution what stands beside its answer where the work can hurt
 * @param needs the data it needs
 * @param formulas the formulas it uses
 */
public record CheckInfo(String id, String title, String clause, String caution, List<String> needs, List<Formula> formulas) {

    /** Refuses a missing part and copies the lists. */
    public CheckInfo {
        if (!id.matches("[a-z0-9-]+(\\.[a-z0-9-]+)+")) {
            throw new IllegalArgumentException("check id must read family.name in lower case: " + id);
        }
        if (title.isBlank() || clause.isBlank() || caution.isBlank()) {
            throw new IllegalArgumentException("a check needs title, clause and caution: " + id);
        }
        Objects.requireNonNull(needs);
        needs = List.copyOf(needs);
        formulas = List.copyOf(formulas);
    }
}
