package cradlewright.ui.preferences;

import cradlewright.report.UnitSystem;
import cradlewright.ui.words.ReaderUnits;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.preference.StringFieldEditor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** Units of the numbers that are read and typed, and the name of whoever signs. */
public final class ReaderPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    /** Its id. */
    public static final String ID = "cradlewright.ui.preferences";

    /** Makes the page. */
    public ReaderPage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, ReaderUnits.NODE);
        store.setDefault(ReaderUnits.KEY, UnitSystem.METRIC.name());
        setPreferenceStore(store);
        setDescription(Messages.Reader_description);
    }

    @Override
    protected void createFieldEditors() {
        String[][] units = {{Messages.Reader_metric, UnitSystem.METRIC.name()}, {Messages.Reader_inch, UnitSystem.INCH.name()}};
        addField(new RadioGroupFieldEditor(ReaderUnits.KEY, Messages.Reader_units, 1, units, getFieldEditorParent(), true));
        addField(new StringFieldEditor(Signer.KEY, Messages.Reader_signer, getFieldEditorParent()));
    }
}
