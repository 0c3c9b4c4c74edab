package cradlewright.ui.wizards;

import cradlewright.model.base.Units;
import cradlewright.model.io.FileKind;
import cradlewright.report.UnitSystem;
import cradlewright.ui.command.ShopOpening;
import cradlewright.ui.words.ReaderUnits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/** Begins a shop: where it lies, its units, its clock, its people. */
final class ShopWizard extends Wizard {

    private final IWorkbenchWindow window;
    private final Page page = new Page();

    ShopWizard(IWorkbenchWindow window) {
        this.window = window;
        setWindowTitle(Messages.Shop_title);
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        try {
            page.plan.write(page.folder);
        } catch (IOException e) {
            MessageDialog.openError(getShell(), Messages.Shop_title, NLS.bind(Messages.Shop_notWritten, page.folder, e.getMessage()));
            return false;
        }
        return ShopOpening.open(window, page.folder);
    }

    private static final class Page extends FieldsPage {

        private static final int LINES = 4;

        private Text name;
        private Text place;
        private Combo units;
        private Combo zone;
        private Text people;
        private boolean placeTyped;
        private Path folder;
        private ShopPlan plan;

        Page() {
            super(Messages.Shop_page, Messages.Shop_about, 1);
        }

        @Override
        void addFields() {
            name = text(Messages.Shop_name, "");
            place = text(Messages.Shop_folder, "");
            label("");
            Button browse = new Button(area(), SWT.PUSH);
            browse.setText(Messages.Shop_browse);
            GridDataFactory.swtDefaults().applyTo(browse);
            browse.addListener(SWT.Selection, event -> {
                DirectoryDialog dialog = new DirectoryDialog(getShell());
                dialog.setText(Messages.Shop_title);
                String chosen = dialog.open();
                if (chosen != null) {
                    place.setText(chosen);
                }
            });
            units = choice(Messages.Shop_units, ReaderUnits.current() == UnitSystem.INCH ? 1 : 0, Messages.Shop_metric, Messages.Shop_inch);
            List<String> zones = ZoneId.getAvailableZoneIds().stream().sorted().toList();
            zone = choice(Messages.Shop_zone, Math.max(0, zones.indexOf(ZoneId.systemDefault().getId())), zones.toArray(String[]::new));
            people = lines(Messages.Shop_people, LINES);
            name.addListener(SWT.Modify, event -> propose());
            place.addListener(SWT.KeyDown, event -> placeTyped = true);
            name.setFocus();
        }

        private void propose() {
            String bare = name.getText().strip().replaceAll("[^\\p{L}\\p{N} ._-]", "");
            if (!placeTyped && !bare.isEmpty()) {
                place.setText(Path.of(System.getProperty("user.home"), bare).toString());
            }
        }

        @Override
        void read() throws Unfit {
            if (name.getText().isBlank()) {
                throw new Unfit(Messages.Name_missing);
            }
            if (place.getText().isBlank()) {
                throw new Unfit(Messages.Shop_noFolder);
            }
            try {
                folder = Path.of(place.getText().strip());
            } catch (InvalidPathException e) {
                throw new Unfit(NLS.bind(Messages.Shop_badFolder, e.getReason()));
            }
            if (!folder.isAbsolute()) {
                throw new Unfit(Messages.Shop_relative);
            }
            if (Files.exists(folder) && !Files.isDirectory(folder)) {
                throw new Unfit(NLS.bind(Messages.Shop_noDirectory, folder));
            }
            if (Files.exists(folder.resolve(FileKind.SHOP.path("")))) {
                throw new Unfit(NLS.bind(Messages.Shop_there, folder));
            }
            plan = new ShopPlan(name.getText().strip(), units.getSelectionIndex() == 1 ? Units.INCH : Units.METRIC,
                    ZoneId.of(zone.getText()), people.getText().lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
        }
    }
}
