package cradlewright.ui.warnings;

import cradlewright.analysis.check.Verdict;
import java.util.List;
import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Groups and their answers as rows of a tree; rows of the same place in another run of the checks count as the same. */
final class AnswerTree implements ITreeContentProvider, IElementComparer {

    private List<AnswerGroup> groups = List.of();

    void show(List<AnswerGroup> shown) {
        groups = shown;
    }

    List<AnswerGroup> groups() {
        return groups;
    }

    /** Returns the verdict of a row, of a group the gravest. */
    static Verdict verdict(Object row) {
        return row instanceof AnswerGroup group ? group.worst() : ((AnswerRow) row).finding().verdict();
    }

    static String what(Object row) {
        return row instanceof AnswerGroup group ? group.title() : ((AnswerRow) row).what();
    }

    static String numbers(Object row) {
        return row instanceof AnswerRow answer ? answer.numbers() : "";
    }

    @Override
    public Object[] getElements(Object input) {
        return groups.toArray();
    }

    @Override
    public Object[] getChildren(Object row) {
        return row instanceof AnswerGroup group ? group.rows().toArray() : new Object[0];
    }

    @Override
    public Object getParent(Object row) {
        return groups.stream().filter(group -> row instanceof AnswerRow answer && group.rows().contains(answer)).findFirst().orElse(null);
    }

    @Override
    public boolean hasChildren(Object row) {
        return row instanceof AnswerGroup;
    }

    @Override
    public boolean equals(Object one, Object other) {
        return key(one).equals(key(other));
    }

    @Override
    public int hashCode(Object row) {
        return key(row).hashCode();
    }

    private static Object key(Object row) {
        return row instanceof AnswerGroup group ? group.id() : row instanceof AnswerRow answer ? answer.key() : row;
    }
}
