package cradlewright.ui.edit;

import cradlewright.model.edit.Removal;
import cradlewright.ui.Messages;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.Collection;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Deletes things after naming what refers to them and would do without. */
public final class Deleting {

    private static final int ROWS_SHOWN = 8;

    private Deleting() {
    }

    /** Tells whether all of these can be deleted: things inside files that may be written. A car or a dolly is a file of its own. */
    public static boolean possible(Collection<?> rows) {
        return !rows.isEmpty() && rows.stream().allMatch(row -> row instanceof EObject object && object.eContainer() != null
                && Edits.possible(object));
    }

    /** Deletes things; asks first when something refers to them. Returns whether they are gone. */
    public static boolean delete(Shell shell, Collection<? extends EObject> objects) {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        List<EObject> outermost = objects.stream().<EObject>map(object -> object)
                .filter(object -> objects.stream().noneMatch(other -> other != object && inside(object, other))).toList();
        String what = outermost.size() == 1 ? Nouns.kindAndName(outermost.get(0)) : NLS.bind(Messages.Delete_several, outermost.size());
        Removal removal = new Removal(shop.folder(), outermost);
        List<EObject> users = removal.users();
        if (!users.isEmpty() && new Question(shell, what, users.stream().map(Deleting::line).toList()).open() != 0) {
            return false;
        }
        return Edits.run(removal.change(NLS.bind(Messages.Edit_delete, what)));
    }

    private static boolean inside(EObject object, EObject other) {
        for (EObject at = object.eContainer(); at != null; at = at.eContainer()) {
            if (at == other) {
                return true;
            }
        }
        return false;
    }

    /** Names a user and what it lies in, outwards to the top of its file. */
    private static String line(EObject user) {
        String line = Nouns.kindAndName(user);
        for (EObject at = user.eContainer(); at != null; at = at.eContainer()) {
            line = NLS.bind(Messages.Delete_user, line, Nouns.kindAndName(at));
        }
        return line;
    }

    /** Names what refers to the things that go. */
    private static final class Question extends MessageDialog {

        private final List<String> users;

        Question(Shell shell, String what, List<String> users) {
            super(shell, Messages.Delete_title, null, NLS.bind(Messages.Delete_question, what), WARNING, 0, Messages.Delete_do,
                    IDialogConstants.CANCEL_LABEL);
            this.users = users;
        }

        @Override
        protected Control createCustomArea(Composite parent) {
            org.eclipse.swt.widgets.List list = new org.eclipse.swt.widgets.List(parent, SWT.BORDER | SWT.V_SCROLL);
            users.forEach(list::add);
            int height = list.getItemHeight() * Math.min(users.size(), ROWS_SHOWN);
            GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, height).applyTo(list);
            return list;
        }
    }
}
