package cradlewright.ui.shop;

import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.ui.Messages;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Runs all checks in the background once nobody has edited for a moment; an edit calls a run off and begins anew. */
final class CheckJob extends Job {

    /** How long nobody must have edited before the checks begin, in milliseconds. */
    private static final long PAUSE = 150;

    /** Hears how a run ended, on the owner thread. */
    interface Outcome {

        /** The checks came to an end. */
        void done(ShopAnswers answers);

        /** Somebody stopped them, and no other run follows. */
        void stopped();

        /** They broke off. */
        void broken(RuntimeException why);
    }

    private final Answering answering;
    private final Executor owner;
    private final Outcome outcome;
    /** Counts wishes, so that a run can tell whether another one follows it. */
    private volatile int wishes;

    CheckJob(Answering answering, Executor owner, Outcome outcome) {
        super(Messages.Checking_name);
        this.answering = answering;
        this.owner = owner;
        this.outcome = outcome;
    }

    /** Has the checks run on the latest snapshot, after a pause or at once. Called on the owner thread only. */
    void wish(boolean atOnce) {
        callOff();
        schedule(atOnce ? 0 : PAUSE);
    }

    /** Calls a run off because its answers are not wanted any more. Called on the owner thread only. */
    void callOff() {
        wishes++;
        cancel();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        int wish = wishes;
        try {
            Optional<ShopAnswers> answers = answering.checkAll(new RunProgress(monitor));
            owner.execute(() -> {
                if (wish == wishes) {
                    answers.ifPresentOrElse(outcome::done, outcome::stopped);
                }
            });
            return answers.isPresent() ? Status.OK_STATUS : Status.CANCEL_STATUS;
        } catch (RuntimeException e) {
            owner.execute(() -> {
                if (wish == wishes) {
                    outcome.broken(e);
                }
            });
            return Status.OK_STATUS;
        }
    }

    /** The two rounds of a run, asking and trying what to do, each half of the bar. */
    private static final class RunProgress implements Progress {

        private static final int ROUND = 500;

        private final SubMonitor whole;
        private SubMonitor round;

        RunProgress(IProgressMonitor monitor) {
            whole = SubMonitor.convert(monitor, Messages.Checking_name, 2 * ROUND);
        }

        @Override
        public void begin(int steps) {
            round = whole.split(ROUND, SubMonitor.SUPPRESS_ISCANCELED).setWorkRemaining(steps);
        }

        @Override
        public void step(String what) {
            round.subTask(NLS.bind(Messages.Checking_done, what));
            round.worked(1);
        }

        @Override
        public boolean cancelled() {
            return whole.isCanceled();
        }
    }
}
