package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.stock.ShimType;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.report.UnitSystem;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.eclipse.osgi.util.NLS;

/**
 * Another height of the shims under a support: made up from the types in stock, thickest first, and for what is left a loose one that
 * somebody has to make. Belongs to the thread that owns the shop.
 */
final class ShimText {

    /** What is left below this needs no shim, mm. */
    private static final double LEFT = 0.05;

    /** Digits of a height in inches: thinner than the thinnest shim. */
    private static final int INCH_DIGITS = 4;

    private ShimText() {
    }

    /** Returns the height of the shims under a support as it is shown for typing. */
    static String shown(Contact contact, UnitSystem units) {
        ShimStack stack = ofMount(contact) ? contact.getMount().getOnDolly() : contact.getShims();
        Unit unit = units.unit(Dimension.LENGTH);
        return Measured.of(height(stack), Unit.MILLIMETRE).format(unit, units == UnitSystem.METRIC ? 2 : INCH_DIGITS, Locale.ROOT);
    }

    /** Returns the height of a stack, mm; zero for none. */
    static double height(ShimStack stack) {
        return stack == null ? 0 : stack.getShims().stream().mapToDouble(ShimText::height).sum();
    }

    private static double height(Shim shim) {
        double one = shim.getShim() != null ? thickness(shim.getShim()) : shim.getLoose() == null ? 0 : shim.getLoose().in(Unit.MILLIMETRE);
        return one * (shim.getCount() == null ? 1 : shim.getCount());
    }

    /** Returns the change that lays shims of that height under a support, mm. */
    static ShopChange lay(Contact contact, double height, ShopFolder folder) {
        return new ShopChange(NLS.bind(Messages.Edit_shims, Nouns.kindAndName(contact)), folder.fileOf(contact).orElseThrow(), () -> {
            ShimStack stack = VehicleFactory.eINSTANCE.createShimStack();
            stack.getShims().addAll(shims(height, types(folder)));
            if (ofMount(contact)) {
                contact.getMount().setOnDolly(stack);
            } else {
                contact.setShims(stack);
            }
        });
    }

    /** Shims are those of the support, else on a dolly those of the body mount. */
    private static boolean ofMount(Contact contact) {
        Mount mount = contact.getMount();
        return contact.getShims() == null && mount != null && ((Setup) contact.eContainer()).getKind() == SetupKind.ON_DOLLY;
    }

    private static List<ShimType> types(ShopFolder folder) {
        List<ShimType> types = new ArrayList<>();
        folder.stock().ifPresent(stock -> stock.getItems().stream().filter(ShimType.class::isInstance).map(ShimType.class::cast)
                .filter(type -> thickness(type) > 0).forEach(types::add));
        types.sort(Comparator.comparingDouble(ShimText::thickness).reversed());
        return types;
    }

    private static double thickness(ShimType type) {
        return type.getThickness() == null ? 0 : type.getThickness().in(Unit.MILLIMETRE);
    }

    private static List<Shim> shims(double height, List<ShimType> types) {
        List<Shim> shims = new ArrayList<>();
        double left = height;
        for (ShimType type : types) {
            int count = (int) Math.floor((left + LEFT / 2) / thickness(type));
            if (count > 0) {
                Shim shim = VehicleFactory.eINSTANCE.createShim();
                shim.setShim(type);
                shim.setCount(count);
                shims.add(shim);
                left -= count * thickness(type);
            }
        }
        if (left >= LEFT) {
            Shim loose = VehicleFactory.eINSTANCE.createShim();
            loose.setLoose(Measured.of(Math.round(100 * left) / 100.0, Unit.MILLIMETRE, Source.DRAWING));
            loose.setCount(1);
            shims.add(loose);
        }
        return shims;
    }
}
