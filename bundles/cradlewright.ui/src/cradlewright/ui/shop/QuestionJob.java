package cradlewright.ui.shop;

import cradlewright.ui.Messages;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Answers one question in the background, unseen: it takes moments, and whoever asked shows that an answer is due. */
final class QuestionJob<T> extends Job implements Question {

    private final Answering answering;
    private final Answering.Asked<T> question;
    private final Answer<T> answer;
    private final Executor owner;
    private volatile boolean givenUp;

    QuestionJob(Answering answering, Answering.Asked<T> question, Answer<T> answer, Executor owner) {
        super(Messages.Question_name);
        this.answering = answering;
        this.question = question;
        this.answer = answer;
        this.owner = owner;
        setSystem(true);
        setPriority(Job.SHORT);
    }

    /** Asks it. */
    void ask() {
        answering.announceQuestion();
        schedule();
    }

    @Override
    public void giveUp() {
        // Not cancelled as a job: one that never runs would not take its announcement back.
        givenUp = true;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            Optional<T> found = answering.answer(question, () -> givenUp);
            found.ifPresent(value -> tell(() -> answer.is(value)));
        } catch (RuntimeException e) {
            tell(() -> answer.failed(e));
        }
        return Status.OK_STATUS;
    }

    private void tell(Runnable told) {
        owner.execute(() -> {
            if (!givenUp) {
                told.run();
            }
        });
    }
}
