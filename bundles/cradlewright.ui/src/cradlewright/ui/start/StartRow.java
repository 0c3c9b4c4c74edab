package cradlewright.ui.start;

import cradlewright.analysis.check.Verdict;
import java.util.Optional;

/** A line of the start page that stands for something with an editor. */
interface StartRow {

    /** Returns the id of what it stands for. */
    String id();

    /** Returns what people call it. */
    String name();

    /** Returns the gravest answer about it; nothing while there is none. */
    Optional<Verdict> verdict();
}
