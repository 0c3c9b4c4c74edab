package cradlewright.ui.recovery;

import org.eclipse.core.runtime.jobs.ISchedulingRule;

/** Lets jobs that share this run one after the other, in the order in which they were scheduled. */
final class OneByOne implements ISchedulingRule {

    @Override
    public boolean contains(ISchedulingRule rule) {
        return rule == this;
    }

    @Override
    public boolean isConflicting(ISchedulingRule rule) {
        return rule == this;
    }
}
