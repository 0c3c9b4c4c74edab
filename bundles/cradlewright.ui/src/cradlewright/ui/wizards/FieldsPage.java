package cradlewright.ui.wizards;

import cradlewright.model.io.FileKind;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.ReaderUnits;
import java.nio.file.Files;
import java.util.Locale;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A page of fields with labels before them; every edit is judged at once, and the page is complete when all can be used. */
abstract class FieldsPage extends WizardPage {

    private static final int DIGITS = 6;

    private final UnitSystem units = ReaderUnits.current();
    private final int columns;
    private Composite area;

    /**
     * @param abreast how many fields stand beside one another
     */
    FieldsPage(String title, String description, int abreast) {
        super(title, title, null);
        columns = 2 * abreast;
        setDescription(description);
    }

    /** Makes the fields, with the methods below. */
    abstract void addFields();

    /** Reads all fields. */
    abstract void read() throws Unfit;

    @Override
    public final void createControl(Composite parent) {
        initializeDialogUnits(parent);
        area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(columns).spacing(10, 8).applyTo(area);
        addFields();
        setControl(area);
        judge();
        // What is missing at the beginning is no mistake yet.
        setErrorMessage(null);
    }

    final Composite area() {
        return area;
    }

    /** Reads the fields and says what is wrong. */
    final void judge() {
        try {
            read();
            setErrorMessage(null);
            setPageComplete(true);
        } catch (Unfit e) {
            setErrorMessage(e.getMessage());
            setPageComplete(false);
        }
    }

    final Text text(String label, String value) {
        label(label);
        Text text = new Text(area, SWT.BORDER | SWT.SINGLE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        fill(text, label, value);
        return text;
    }

    final Text lines(String label, int count) {
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(label(label));
        Text text = new Text(area, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, count * text.getLineHeight()).applyTo(text);
        fill(text, label, "");
        return text;
    }

    private void fill(Text text, String label, String value) {
        Spoken.name(text, label.replace("&", ""));
        text.setText(value);
        text.addListener(SWT.Modify, event -> judge());
    }

    final Combo choice(String label, int chosen, String... items) {
        label(label);
        Combo combo = new Combo(area, SWT.READ_ONLY);
        combo.setItems(items);
        combo.select(chosen);
        Spoken.name(combo, label.replace("&", ""));
        combo.addListener(SWT.Selection, event -> judge());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    final Button tick(String label, boolean ticked) {
        Button button = new Button(area, SWT.CHECK);
        button.setText(label);
        button.setSelection(ticked);
        button.addListener(SWT.Selection, event -> judge());
        GridDataFactory.fillDefaults().span(columns, 1).applyTo(button);
        return button;
    }

    final Label label(String words) {
        Label label = new Label(area, SWT.NONE);
        label.setText(words);
        return label;
    }

    /** Returns a length in the units of the reader, as it is proposed in a field. */
    final String length(double millimetres) {
        return shown(Measured.of(millimetres, Unit.MILLIMETRE));
    }

    /** Returns a mass in the units of the reader, as it is proposed in a field. */
    final String mass(double kilograms) {
        return shown(Measured.of(kilograms, Unit.KILOGRAM));
    }

    private String shown(Measured value) {
        return value.typed(units.unit(value.dimension()), DIGITS, Locale.getDefault(Locale.Category.FORMAT));
    }

    /** Reads a length, mm. */
    final double length(Text field, String label, double low, double high) throws Unfit {
        return number(field, label, Measured.of(low, Unit.MILLIMETRE), Measured.of(high, Unit.MILLIMETRE));
    }

    /** Reads a mass, kg. */
    final double mass(Text field, String label, double low, double high) throws Unfit {
        return number(field, label, Measured.of(low, Unit.KILOGRAM), Measured.of(high, Unit.KILOGRAM));
    }

    /** Reads a force, N. */
    final double force(Text field, String label, double low, double high) throws Unfit {
        return number(field, label, Measured.of(low, Unit.NEWTON), Measured.of(high, Unit.NEWTON));
    }

    private double number(Text field, String label, Measured low, Measured high) throws Unfit {
        Dimension dimension = low.dimension();
        double found;
        try {
            found = Measured.parseTyped(field.getText(), dimension, units.unit(dimension), Locale.getDefault(Locale.Category.FORMAT))
                    .in(dimension.stored());
        } catch (QuantityFormatException e) {
            throw new Unfit(NLS.bind(Messages.Field_unread, new Object[] {bare(label), e.what(), e.mend()}));
        }
        if (found < low.value() || found > high.value()) {
            throw new Unfit(NLS.bind(Messages.Field_range, new Object[] {bare(label), shown(low), shown(high)}));
        }
        return found;
    }

    /** Reads a whole number. */
    static int whole(Text field, String label, int low, int high) throws Unfit {
        String text = field.getText().strip();
        int found = text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : -1;
        if (found < low || found > high) {
            throw new Unfit(NLS.bind(Messages.Field_range, new Object[] {bare(label), low, high}));
        }
        return found;
    }

    private static String bare(String label) {
        return label.replace("&", "").replaceFirst(":$", "");
    }

    /** Reads a name for a thing that gets a file of its own in the open shop, and returns the name of the file. */
    static String fileName(Text field, FileKind kind) throws Unfit {
        String name = field.getText().strip();
        if (name.isEmpty()) {
            throw new Unfit(Messages.Name_missing);
        }
        String file = name.replaceAll("[^\\p{L}\\p{N} ._-]", "").replaceFirst("^[ ._-]+", "").strip();
        if (file.isEmpty() || file.length() > 80) {
            throw new Unfit(Messages.Name_unfit);
        }
        WorkingShop shop = WorkingShop.current().orElseThrow();
        String path = kind.path(file);
        if (shop.folder().files().stream().anyMatch(each -> each.path().equalsIgnoreCase(path))
                || Files.exists(shop.folder().directory().resolve(path))) {
            throw new Unfit(NLS.bind(Messages.Name_there, name));
        }
        return file;
    }
}
