package cradlewright.analysis.importer;

import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.Hold;
import cradlewright.model.base.Examined;
import java.util.Optional;

/** Words and tags that several kinds of objects share. */
final class Words {

    private Words() {
    }

    /** Returns the condition; not looked at when nobody said. */
    static Condition condition(cradlewright.model.base.Condition condition) {
        if (condition == null) {
            return Condition.NOT_LOOKED_AT;
        }
        return switch (condition) {
            case SOUND -> Condition.SOUND;
            case THIN -> Condition.THIN;
            case HOLED -> Condition.HOLED;
            case REPAIRED -> Condition.REPAIRED;
            case NOT_LOOKED_AT -> Condition.NOT_LOOKED_AT;
        };
    }

    static Optional<Hold> hold(cradlewright.model.base.Hold hold) {
        return Optional.ofNullable(hold).map(given -> switch (given) {
            case RESTS -> Hold.RESTS;
            case PINNED -> Hold.PINNED;
            case BOLTED -> Hold.BOLTED;
        });
    }

    static Optional<Basis> basis(cradlewright.model.base.Basis basis) {
        return Optional.ofNullable(basis).map(given -> switch (given) {
            case WORKING_LOAD_LIMIT -> Basis.WORKING_LOAD_LIMIT;
            case RATED_LOAD -> Basis.RATED_LOAD;
            case DESIGN_RESISTANCE -> Basis.DESIGN_RESISTANCE;
        });
    }

    static Examination examination(Examined examined) {
        return new Examination(Values.text(examined.getTag()), Optional.ofNullable(examined.getLastExamined()),
                Optional.ofNullable(examined.getExaminationDue()));
    }
}
