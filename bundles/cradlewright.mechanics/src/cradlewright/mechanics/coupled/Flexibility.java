package cradlewright.mechanics.coupled;

import java.util.List;

import cradlewright.mechanics.frame.ForceMoment;

/** How an elastic body gives at its contacts and sags under its own loads. */
public interface Flexibility {

    /**
     * Condenses the body to its contact actions. Both parts of the answer must come from one and the same hold of the free
     * body; leaving out the sag gives wrong contact forces that depend on the hold.
     */
    Condensed condense(List<UnitAction> actions);

    /** Returns the sum of the loads that are not contacts (weight, boxes, people), moment about the origin. */
    ForceMoment loads();
}
