package cradlewright.ui.wizards;

import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/** Begins a car: how it is built, its mounts, and a parts list to fill in. */
final class CarWizard extends Wizard {

    private static final int MOST_ROWS = 12;
    private static final double[] LENGTH = {1500, 9000};
    private static final double[] WIDTH = {900, 2600};

    private final IWorkbenchWindow window;
    private final Page page = new Page();
    private final PartsPage parts = new PartsPage();

    CarWizard(IWorkbenchWindow window) {
        this.window = window;
        setWindowTitle(Messages.Car_title);
        addPage(page);
        addPage(parts);
    }

    @Override
    public boolean performFinish() {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        IdSource ids = IdSource.secure();
        Car car = ids.give(VehicleFactory.eINSTANCE.createCar());
        car.setName(page.name.getText().strip());
        CarPlan plan = new CarPlan(page.kind(), page.rows, page.size, parts.planned());
        try {
            ShopFile file = NewFile.make(shop.stack(), FileKind.CAR, page.file, car, Messages.Car_change, List.of(),
                    () -> plan.fill(car, ids));
            ShopEditors.open(window.getActivePage(), file);
            return true;
        } catch (IOException | ChangeRefused e) {
            MessageDialog.openError(getShell(), Messages.Car_title, NLS.bind(Messages.New_notSaved, e.getMessage()));
            return false;
        }
    }

    private final class Page extends FieldsPage {

        private Text name;
        private Combo kind;
        private Text mounts;
        private Button guess;
        private Text length;
        private Text width;
        private CarKind before;
        private String file;
        private int rows;
        private Optional<CarPlan.Size> size = Optional.empty();

        Page() {
            super(Messages.Car_page, Messages.Car_about, 1);
        }

        @Override
        void addFields() {
            name = text(Messages.Car_name, "");
            kind = choice(Messages.Car_kind, 0, Messages.Kind_chassis, Messages.Kind_unit, Messages.Kind_ladder);
            mounts = text(Messages.Car_mounts, "");
            guess = tick(Messages.Car_guess, false);
            length = text(Messages.Car_length, length(4000));
            width = text(Messages.Car_width, length(1500));
            name.setFocus();
        }

        private CarKind kind() {
            return CarKind.values()[kind.getSelectionIndex()];
        }

        @Override
        void read() throws Unfit {
            if (width == null) {
                return;
            }
            length.setEnabled(guess.getSelection());
            width.setEnabled(guess.getSelection());
            if (before != kind()) {
                before = kind();
                mounts.setText(Integer.toString(kind().mountRows()));
            }
            parts.show(kind(), guess.getSelection());
            file = fileName(name, FileKind.CAR);
            rows = whole(mounts, Messages.Car_mounts, 1, MOST_ROWS);
            size = guess.getSelection() ? Optional.of(new CarPlan.Size(length(length, Messages.Car_length, LENGTH[0], LENGTH[1]),
                    length(width, Messages.Car_width, WIDTH[0], WIDTH[1]))) : Optional.empty();
        }
    }
}
