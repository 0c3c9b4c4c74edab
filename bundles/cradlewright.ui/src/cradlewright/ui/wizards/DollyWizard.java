package cradlewright.ui.wizards;

import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.stock.Stock;
import cradlewright.ui.shop.ShopEditors;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchWindow;

/** Begins a dolly, of the shop's own make or bought; what the checks say to it under the heaviest shell stands below while it is typed. */
final class DollyWizard extends Wizard {

    private static final double[] GAUGES = {1.5, 2, 2.5, 3, 4, 5, 6, 8};
    private static final int USUAL_GAUGE = 4;
    private static final double[] WHEELS = {80, 100, 125, 160, 200};
    private static final int USUAL_WHEEL = 3;
    private static final int MOST_ROWS = 8;

    private final IWorkbenchWindow window;
    private final Page page = new Page();

    DollyWizard(IWorkbenchWindow window) {
        this.window = window;
        setWindowTitle(Messages.Dolly_title);
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        WorkingShop shop = WorkingShop.current().orElseThrow();
        IdSource ids = IdSource.secure();
        Dolly dolly = ids.give(FixtureFactory.eINSTANCE.createDolly());
        dolly.setName(page.name.getText().strip());
        DollyPlan plan = page.plan;
        try {
            ShopFile stock = NewFile.stock(shop.stack());
            ShopFile file = NewFile.make(shop.stack(), FileKind.DOLLY, page.file, dolly, Messages.Dolly_change, List.of(stock),
                    () -> plan.fill(dolly, (Stock) stock.root().orElseThrow(), ids));
            ShopEditors.open(window.getActivePage(), file);
            return true;
        } catch (IOException | ChangeRefused e) {
            MessageDialog.openError(getShell(), Messages.Dolly_title, NLS.bind(Messages.New_notSaved, e.getMessage()));
            return false;
        }
    }

    private static final class Page extends FieldsPage {

        private Text name;
        private Combo build;
        private Text length;
        private Text width;
        private Text height;
        private Text rail;
        private Combo gauge;
        private Text rows;
        private Combo wheel;
        private Text castorHeight;
        private Text castorLoad;
        private Text plate;
        private Text fixture;
        private Text weight;
        private Text heaviest;
        private TrialAnswer answer;
        private String file;
        private DollyPlan plan;

        Page() {
            super(Messages.Dolly_page, Messages.Dolly_about, 2);
        }

        @Override
        void addFields() {
            name = text(Messages.Dolly_name, "");
            build = choice(Messages.Dolly_build, 0, Messages.Dolly_own, Messages.Dolly_bought);
            length = text(Messages.Dolly_length, length(2800));
            width = text(Messages.Dolly_width, length(960));
            height = text(Messages.Dolly_height, length(480));
            rail = text(Messages.Dolly_railHeight, length(80));
            gauge = choice(Messages.Dolly_gauge, USUAL_GAUGE, lengths(GAUGES));
            rows = text(Messages.Dolly_rows, "2");
            wheel = choice(Messages.Dolly_wheel, USUAL_WHEEL, lengths(WHEELS));
            castorHeight = text(Messages.Dolly_castorHeight, length(200));
            castorLoad = text(Messages.Dolly_castorLoad, "");
            plate = text(Messages.Dolly_plate, "");
            fixture = text(Messages.Dolly_fixture, "");
            weight = text(Messages.Dolly_weight, "");
            heaviest = text(Messages.Dolly_heaviest, "");
            answer = new TrialAnswer(area());
            name.setFocus();
        }

        private String[] lengths(double[] all) {
            String[] words = new String[all.length];
            for (int i = 0; i < all.length; i++) {
                words[i] = length(all[i]);
            }
            return words;
        }

        @Override
        void read() throws Unfit {
            if (answer == null) {
                return;
            }
            boolean own = build.getSelectionIndex() == 0;
            rail.setEnabled(own);
            gauge.setEnabled(own);
            plate.setEnabled(!own);
            Optional<DollyPlan> before = Optional.ofNullable(plan);
            plan = null;
            double mass = 0;
            try {
                DollyPlan read = readPlan(own);
                mass = heaviest.getText().isBlank() ? 0 : mass(heaviest, Messages.Dolly_heaviest, 1, 10_000);
                plan = read;
            } finally {
                if (plan == null) {
                    answer.nothing(Messages.Trial_unfit);
                } else if (mass == 0) {
                    answer.nothing(Messages.Trial_noMass);
                } else {
                    answer.ask(plan, mass, before.equals(Optional.of(plan)));
                }
            }
            file = fileName(name, FileKind.DOLLY);
        }

        private DollyPlan readPlan(boolean own) throws Unfit {
            double thickness = GAUGES[gauge.getSelectionIndex()];
            DollyPlan read = new DollyPlan(own, length(length, Messages.Dolly_length, 600, 8000),
                    length(width, Messages.Dolly_width, 300, 3000), length(height, Messages.Dolly_height, 100, 2000),
                    own ? length(rail, Messages.Dolly_railHeight, 40, 300) : 0, own ? thickness : 0,
                    whole(rows, Messages.Dolly_rows, 1, MOST_ROWS), WHEELS[wheel.getSelectionIndex()],
                    length(castorHeight, Messages.Dolly_castorHeight, 60, 600),
                    mass(castorLoad, Messages.Dolly_castorLoad, 1, 10_000),
                    own ? Optional.empty() : Optional.of(mass(plate, Messages.Dolly_plate, 1, 40_000)),
                    fixture.getText().isBlank() ? Optional.empty() : Optional.of(force(fixture, Messages.Dolly_fixture, 10, 100_000)),
                    weight.getText().isBlank() ? Optional.empty() : Optional.of(mass(weight, Messages.Dolly_weight, 1, 5_000)));
            if (read.castorHeight() <= read.wheel()) {
                throw new Unfit(Messages.Dolly_castorTooLow);
            }
            if (read.height() <= read.axis() + read.rail() / 2) {
                throw new Unfit(NLS.bind(Messages.Dolly_tooLow, length(read.axis() + read.rail() / 2)));
            }
            if (own && read.rail() < 10 * thickness) {
                throw new Unfit(Messages.Dolly_railTooLow);
            }
            return read;
        }
    }
}
