package cradlewright.ui.shop;

/** Something that was asked in the background. */
@FunctionalInterface
public interface Question {

    /** Gives the question up; no answer comes from now on. */
    void giveUp();
}
