package cradlewright.ui.shop;

import org.eclipse.core.runtime.ILog;

/**
 * Takes the answer to a question, on the owner thread. It is called once at most: not at all when the question was given up or the shop
 * was put away.
 */
@FunctionalInterface
public interface Answer<T> {

    /** Called with the answer, which is for the snapshot that was the latest when it was worked out. */
    void is(T value);

    /** Called when it could not be worked out; whoever shows answers must not leave an old one standing. */
    default void failed(RuntimeException why) {
        ILog.of(Answer.class).error("A question about the shop was not answered.", why);
    }
}
