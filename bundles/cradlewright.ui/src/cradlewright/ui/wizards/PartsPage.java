package cradlewright.ui.wizards;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.ui.look.Spoken;
import cradlewright.ui.words.ReaderUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The parts that such a car usually has: untick what it has not, type what is known of their masses. */
final class PartsPage extends WizardPage {

    private static final int HEIGHT = 300;
    private static final int MASS_WIDTH = 110;
    private static final int DIGITS = 4;
    private static final List<Source> SOURCES = List.of(Source.WEIGHED, Source.MAKERS_SHEET, Source.LIKE_ANOTHER_CAR, Source.GUESSED);

    private final UnitSystem units = ReaderUnits.current();
    private final List<Row> rows = new ArrayList<>();
    private ScrolledComposite scrolled;
    private CarKind shown;
    private CarKind wanted;
    private boolean guessed;
    private boolean shownGuessed;

    PartsPage() {
        super(Messages.Parts_page, Messages.Parts_page, null);
        setDescription(Messages.Parts_about);
    }

    /** One line of the list. */
    private record Row(String piece, CarKind.TypicalPart typical, Button has, Text mass, Combo source) {
    }

    @Override
    public void createControl(Composite parent) {
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().applyTo(area);
        scrolled = new ScrolledComposite(area, SWT.V_SCROLL | SWT.BORDER);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(scrolled);
        setControl(area);
        fill();
    }

    /** Shows the parts of another kind of car, or the same without or with guessed masses. */
    void show(CarKind kind, boolean withGuesses) {
        wanted = kind;
        guessed = withGuesses;
        if (scrolled != null) {
            fill();
        }
    }

    private void fill() {
        if (wanted == null || wanted == shown && guessed == shownGuessed) {
            return;
        }
        shown = wanted;
        shownGuessed = guessed;
        rows.clear();
        if (scrolled.getContent() != null) {
            scrolled.getContent().dispose();
        }
        Composite list = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(list);
        for (CarKind.TypicalPiece piece : shown.pieces()) {
            Label heading = new Label(list, SWT.NONE);
            heading.setText(piece.name());
            heading.setFont(JFaceResources.getBannerFont());
            GridDataFactory.fillDefaults().span(3, 1).applyTo(heading);
            piece.parts().forEach(part -> rows.add(row(list, piece, part)));
        }
        scrolled.setContent(list);
        Point size = list.computeSize(SWT.DEFAULT, SWT.DEFAULT);
        scrolled.setMinSize(size);
        for (Control child : list.getChildren()) {
            child.addListener(SWT.FocusIn, event -> scrolled.showControl(child));
        }
        judge();
    }

    private Row row(Composite list, CarKind.TypicalPiece piece, CarKind.TypicalPart part) {
        Button has = new Button(list, SWT.CHECK);
        has.setText(part.name());
        has.setSelection(true);
        GridDataFactory.fillDefaults().grab(true, false).indent(12, 0).applyTo(has);
        Text mass = new Text(list, SWT.BORDER | SWT.RIGHT);
        Spoken.name(mass, NLS.bind(Messages.Parts_massOf, part.name()));
        mass.setMessage(Messages.Parts_notKnown);
        GridDataFactory.fillDefaults().hint(MASS_WIDTH, SWT.DEFAULT).applyTo(mass);
        Combo source = new Combo(list, SWT.READ_ONLY);
        SOURCES.forEach(each -> source.add(each.word()));
        Spoken.name(source, NLS.bind(Messages.Parts_sourceOf, part.name()));
        if (shownGuessed) {
            mass.setText(Measured.of(part.mass(), Unit.KILOGRAM).typed(units.unit(Dimension.MASS), DIGITS,
                    Locale.getDefault(Locale.Category.FORMAT)));
        }
        source.select(SOURCES.indexOf(shownGuessed ? Source.GUESSED : Source.WEIGHED));
        has.addListener(SWT.Selection, event -> {
            mass.setEnabled(has.getSelection());
            source.setEnabled(has.getSelection());
            judge();
        });
        mass.addListener(SWT.Modify, event -> judge());
        return new Row(piece.name(), part, has, mass, source);
    }

    private void judge() {
        try {
            planned();
            setErrorMessage(null);
            setPageComplete(true);
        } catch (QuantityFormatException e) {
            setErrorMessage(NLS.bind(Messages.Field_unread, new Object[] {Messages.Parts_mass, e.what(), e.mend()}));
            setPageComplete(false);
        }
    }

    /**
     * Returns the parts that are ticked.
     *
     * @throws QuantityFormatException when a mass cannot be read
     */
    List<CarPlan.PlannedPart> planned() {
        return rows.stream().filter(row -> row.has().getSelection())
                .map(row -> new CarPlan.PlannedPart(row.piece(), row.typical(), mass(row))).toList();
    }

    private Optional<Measured> mass(Row row) {
        if (row.mass().getText().isBlank()) {
            return Optional.empty();
        }
        Measured typed = Measured.parseTyped(row.mass().getText(), Dimension.MASS, units.unit(Dimension.MASS),
                Locale.getDefault(Locale.Category.FORMAT)).to(Dimension.MASS.stored());
        if (typed.value() <= 0) {
            throw new QuantityFormatException(NLS.bind(Messages.Parts_notPositive, row.typical().name()), Messages.Parts_leaveEmpty);
        }
        return Optional.of(Measured.of(typed.value(), typed.unit(), SOURCES.get(row.source().getSelectionIndex())));
    }
}
