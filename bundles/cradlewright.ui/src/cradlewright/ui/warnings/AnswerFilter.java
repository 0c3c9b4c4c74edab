package cradlewright.ui.warnings;

import org.eclipse.jface.viewers.Viewer;
import org.eclipse.ui.dialogs.PatternFilter;

/** Lets rows through that have the words in their answer, reason, numbers or the name of the check. */
final class AnswerFilter extends PatternFilter {

    AnswerFilter() {
        setIncludeLeadingWildcard(true);
    }

    @Override
    protected boolean isLeafMatch(Viewer viewer, Object row) {
        return wordMatches(AnswerTree.verdict(row).word()) || wordMatches(AnswerTree.what(row)) || wordMatches(AnswerTree.numbers(row))
                || row instanceof AnswerRow answer && wordMatches(answer.finding().check());
    }
}
