package cradlewright.ui.navigator;

import cradlewright.model.base.FileRoot;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.ITreeContentProvider;

/**
 * The rows of the tree: shelves for the kinds of files, on them the objects at the top of the files or, for a file that could not be read,
 * the file; below them what is inside, in lists with headings where an object has several.
 */
final class ShopTree implements ITreeContentProvider {

    private static final List<FileKind> SHELVES = List.of(FileKind.CAR, FileKind.DOLLY, FileKind.GEAR, FileKind.FLOOR, FileKind.JOBS,
            FileKind.STOCK);

    /** Lists that stand below their object without a heading. */
    private static final Map<EClass, EReference> PLAIN = Map.of(
            VehiclePackage.Literals.CAR, VehiclePackage.Literals.CAR__PIECES,
            VehiclePackage.Literals.PIECE, VehiclePackage.Literals.PIECE__PARTS,
            FixturePackage.Literals.GEAR_STORE, FixturePackage.Literals.GEAR_STORE__ITEMS,
            FixturePackage.Literals.SETUP, FixturePackage.Literals.SETUP__CONTACTS,
            JobPackage.Literals.JOB_BOOK, JobPackage.Literals.JOB_BOOK__JOBS,
            JobPackage.Literals.JOB, JobPackage.Literals.JOB__OPERATIONS,
            StockPackage.Literals.STOCK, StockPackage.Literals.STOCK__ITEMS);

    /** Lists with a heading, in the order in which people ask for them. */
    private static final Map<EClass, List<EReference>> HEADED = Map.of(
            VehiclePackage.Literals.CAR, List.of(VehiclePackage.Literals.CAR__VISITS, VehiclePackage.Literals.CAR__STAGES,
                    VehiclePackage.Literals.CAR__SETUPS, VehiclePackage.Literals.CAR__MOUNTS, VehiclePackage.Literals.CAR__LIFT_POINTS,
                    VehiclePackage.Literals.CAR__WORK_POINTS, VehiclePackage.Literals.CAR__CUT_ZONES,
                    VehiclePackage.Literals.CAR__TEMPORARY_LOADS, VehiclePackage.Literals.CAR__BRACES, VehiclePackage.Literals.CAR__MARKS),
            FixturePackage.Literals.DOLLY, List.of(FixturePackage.Literals.DOLLY__FIXTURES, FixturePackage.Literals.DOLLY__PROPS,
                    FixturePackage.Literals.DOLLY__CASTORS, FixturePackage.Literals.DOLLY__FEET, FixturePackage.Literals.DOLLY__MEMBERS,
                    FixturePackage.Literals.DOLLY__JOINTS),
            FixturePackage.Literals.LIFT, List.of(FixturePackage.Literals.LIFT__COLUMNS, FixturePackage.Literals.LIFT__ARMS),
            FixturePackage.Literals.HOIST, List.of(FixturePackage.Literals.HOIST__BOOM_HOLES),
            FloorPackage.Literals.FLOOR, List.of(FloorPackage.Literals.FLOOR__PLACES, FloorPackage.Literals.FLOOR__PLACEMENTS,
                    FloorPackage.Literals.FLOOR__SLABS, FloorPackage.Literals.FLOOR__DOORS, FloorPackage.Literals.FLOOR__COLUMNS),
            JobPackage.Literals.JOB_BOOK, List.of(JobPackage.Literals.JOB_BOOK__HOLD_POINTS, JobPackage.Literals.JOB_BOOK__BOOKINGS,
                    JobPackage.Literals.JOB_BOOK__WAITS, JobPackage.Literals.JOB_BOOK__PEOPLE));

    private ShopFolder folder;

    /** Sets the shop that is shown; none shows nothing. */
    void show(Optional<ShopFolder> shown) {
        folder = shown.orElse(null);
    }

    @Override
    public Object[] getElements(Object input) {
        return folder == null ? new Object[0] : SHELVES.stream().map(Shelf::new).filter(shelf -> !files(shelf).isEmpty()).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        if (parent instanceof Shelf shelf) {
            if (shelf.kind().single()) {
                return files(shelf).stream().flatMap(file -> file.root().map(this::inside).orElse(List.of(file)).stream()).toArray();
            }
            return files(shelf).stream().map(ShopTree::row).toArray();
        }
        return parent instanceof Group group ? group.members().toArray()
                : parent instanceof EObject object ? inside(object).toArray() : new Object[0];
    }

    @Override
    public boolean hasChildren(Object parent) {
        return getChildren(parent).length > 0;
    }

    @Override
    public Object getParent(Object child) {
        if (child instanceof Group group) {
            return row(group.owner());
        }
        if (child instanceof ShopFile file) {
            return new Shelf(file.kind());
        }
        if (!(child instanceof EObject object) || folder == null) {
            return null;
        }
        if (object instanceof FileRoot) {
            return folder.fileOf(object).map(file -> new Shelf(file.kind())).orElse(null);
        }
        EObject owner = object.eContainer();
        if (owner == null || PLAIN.get(owner.eClass()) == object.eContainmentFeature()) {
            return owner == null ? null : row(owner);
        }
        return new Group(owner, object.eContainmentFeature());
    }

    /** Returns the row on which an object is found; of a file of which there is one only, that is its shelf. */
    private Object row(EObject object) {
        return folder.fileOf(object).filter(file -> object instanceof FileRoot && file.kind().single())
                .<Object>map(file -> new Shelf(file.kind())).orElse(object);
    }

    private static Object row(ShopFile file) {
        return file.root().<Object>map(root -> root).orElse(file);
    }

    private List<ShopFile> files(Shelf shelf) {
        return folder.files().stream().filter(file -> file.kind() == shelf.kind()).toList();
    }

    private List<Object> inside(EObject object) {
        List<Object> rows = new ArrayList<>();
        EReference plain = PLAIN.get(object.eClass());
        if (plain != null) {
            rows.addAll((List<?>) object.eGet(plain));
        }
        HEADED.getOrDefault(object.eClass(), List.of()).stream().map(list -> new Group(object, list))
                .filter(group -> !group.members().isEmpty()).forEach(rows::add);
        return rows;
    }
}
