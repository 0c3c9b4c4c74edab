package cradlewright.ui.navigator;

import cradlewright.model.base.Identified;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.ShopFile;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.ui.Messages;
import cradlewright.ui.look.Picture;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Image;

/** Names and pictures of the rows; a file with unsaved edits is marked before its name. */
final class ShopLabels extends ColumnLabelProvider {

    private static final Map<FileKind, Picture> OF_SHELF = Map.of(FileKind.CAR, Picture.CAR, FileKind.DOLLY, Picture.DOLLY, FileKind.GEAR,
            Picture.GEAR, FileKind.FLOOR, Picture.FLOOR, FileKind.JOBS, Picture.JOB, FileKind.STOCK, Picture.STOCK);

    private static final Map<EClass, Picture> OF_OBJECT = pictures();

    private static Map<EClass, Picture> pictures() {
        Map<EClass, Picture> all = new LinkedHashMap<>();
        all.put(VehiclePackage.Literals.CAR, Picture.CAR);
        all.put(VehiclePackage.Literals.PIECE, Picture.PIECE);
        all.put(VehiclePackage.Literals.PART, Picture.PART);
        all.put(VehiclePackage.Literals.STAGE, Picture.STAGE);
        all.put(VehiclePackage.Literals.VISIT, Picture.VISIT);
        all.put(VehiclePackage.Literals.CUT_ZONE, Picture.ZONE);
        all.put(VehiclePackage.Literals.TEMPORARY_LOAD, Picture.LOAD);
        all.put(VehiclePackage.Literals.BRACE, Picture.MEMBER);
        all.put(FixturePackage.Literals.SETUP, Picture.SETUP);
        all.put(FixturePackage.Literals.CONTACT, Picture.FIXTURE);
        all.put(FixturePackage.Literals.DOLLY, Picture.DOLLY);
        all.put(FixturePackage.Literals.FIXTURE, Picture.FIXTURE);
        all.put(FixturePackage.Literals.PROP, Picture.FIXTURE);
        all.put(FixturePackage.Literals.CASTOR, Picture.CASTOR);
        all.put(FixturePackage.Literals.MEMBER, Picture.MEMBER);
        all.put(FixturePackage.Literals.JOINT, Picture.JOINT);
        all.put(FixturePackage.Literals.GEAR, Picture.GEAR);
        all.put(FloorPackage.Literals.PLACE, Picture.PLACE);
        all.put(FloorPackage.Literals.SLAB, Picture.FLOOR);
        all.put(JobPackage.Literals.JOB, Picture.JOB);
        all.put(JobPackage.Literals.OPERATION, Picture.OPERATION);
        all.put(JobPackage.Literals.PERSON, Picture.PERSON);
        all.put(StockPackage.Literals.STOCK_ITEM, Picture.STOCK);
        return all;
    }

    /** Returns the name of a row without marks. */
    static String name(Object row) {
        if (row instanceof Shelf shelf) {
            return shelf(shelf.kind());
        }
        if (row instanceof Group group) {
            return Nouns.heading(group.list());
        }
        return row instanceof ShopFile file ? file.path() : row instanceof EObject object ? Nouns.name(object) : "";
    }

    /** Returns the id of a row that stands for something with an id; empty for others. */
    static String id(Object row) {
        return row instanceof Identified identified && identified.getId() != null ? identified.getId() : "";
    }

    private static String shelf(FileKind kind) {
        return switch (kind) {
            case CAR -> Messages.Shelf_cars;
            case DOLLY -> Messages.Shelf_dollies;
            case GEAR -> Messages.Shelf_gear;
            case FLOOR -> Messages.Shelf_floor;
            case JOBS -> Messages.Shelf_jobs;
            case STOCK -> Messages.Shelf_stock;
            case SHOP -> Messages.Shelf_shop;
        };
    }

    @Override
    public String getText(Object row) {
        return unsaved(row) ? NLS.bind(Messages.Navigator_unsaved, name(row)) : name(row);
    }

    @Override
    public String getToolTipText(Object row) {
        return row instanceof EObject object ? Nouns.kindAndName(object) : null;
    }

    @Override
    public Image getImage(Object row) {
        return picture(row).image();
    }

    private static Picture picture(Object row) {
        if (row instanceof Shelf shelf) {
            return OF_SHELF.getOrDefault(shelf.kind(), Picture.SHOP);
        }
        if (row instanceof ShopFile) {
            return Picture.BROKEN;
        }
        return row instanceof EObject object ? OF_OBJECT.entrySet().stream().filter(entry -> entry.getKey().isSuperTypeOf(object.eClass()))
                .map(Map.Entry::getValue).findFirst().orElse(Picture.POINT) : Picture.GROUP;
    }

    private static boolean unsaved(Object row) {
        WorkingShop shop = WorkingShop.current().orElse(null);
        if (shop == null) {
            return false;
        }
        return row instanceof Shelf shelf
                ? shop.folder().files().stream().anyMatch(file -> file.kind() == shelf.kind() && shelf.kind().single()
                && unsaved(shop, file))
                : row instanceof EObject object && object.eContainer() == null
                        && shop.folder().fileOf(object).filter(file -> unsaved(shop, file)).isPresent();
    }

    private static boolean unsaved(WorkingShop shop, ShopFile file) {
        return file.state() == ShopFile.State.WRITABLE && shop.stack().isDirty(file);
    }
}
