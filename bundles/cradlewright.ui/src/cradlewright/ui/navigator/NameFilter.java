package cradlewright.ui.navigator;

import org.eclipse.jface.viewers.Viewer;
import org.eclipse.ui.dialogs.PatternFilter;

/** Lets rows through whose name or verdict has the words in it. */
final class NameFilter extends PatternFilter {

    private final VerdictLabels verdicts;

    NameFilter(VerdictLabels verdicts) {
        this.verdicts = verdicts;
        setIncludeLeadingWildcard(true);
    }

    @Override
    protected boolean isLeafMatch(Viewer viewer, Object row) {
        return wordMatches(ShopLabels.name(row)) || wordMatches(verdicts.getText(row));
    }
}
