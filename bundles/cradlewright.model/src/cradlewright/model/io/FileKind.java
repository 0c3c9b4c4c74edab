package cradlewright.model.io;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import java.util.Arrays;
import java.util.Optional;
import org.eclipse.emf.ecore.EClass;

/** The kinds of files in the folder of a shop. Which files belong to a shop is told by the folder alone; there is no list. */
public enum FileKind {
    /** The shop and its settings; the file that makes a folder a shop. */
    SHOP("", "shop", ".cwshop"),
    /** Stock. */
    STOCK("", "stock", ".cwstock"),
    /** Lifting gear. */
    GEAR("", "gear", ".cwgear"),
    /** Floor and places. */
    FLOOR("", "floor", ".cwfloor"),
    /** Jobs and bookings. */
    JOBS("", "jobs", ".cwjobs"),
    /** One car a file. */
    CAR("cars/", "", ".cwcar"),
    /** One dolly a file. */
    DOLLY("dollies/", "", ".cwdolly");

    private final String folder;
    private final String onlyName;
    private final String extension;

    FileKind(String folder, String onlyName, String extension) {
        this.folder = folder;
        this.onlyName = onlyName;
        this.extension = extension;
    }

    /** Returns the folder below that of the shop, empty or with a slash at its end. */
    public String folder() {
        return folder;
    }

    /** Returns the end of the file name, with its dot. */
    public String extension() {
        return extension;
    }

    /** Returns whether a shop has at most one file of this kind. */
    public boolean single() {
        return !onlyName.isEmpty();
    }

    /**
     * Returns the path of a file below the folder of the shop.
     *
     * @param name name without folder and extension; not used for kinds of which a shop has only one
     * @throws IllegalArgumentException when the name is not made of letters, digits, blank, dot, hyphen and underscore
     */
    public String path(String name) {
        if (single()) {
            return onlyName + extension;
        }
        if (!name.matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,99}")) {
            throw new IllegalArgumentException("a file name must begin with a letter or digit and hold letters, digits, "
                    + "blank, dot, hyphen and underscore only, found " + Words.quote(name));
        }
        return folder + name + extension;
    }

    /** Finds the kind of a file by its path below the folder of the shop, with slashes. */
    public static Optional<FileKind> of(String path) {
        return Arrays.stream(values()).filter(kind -> kind.fits(path)).findFirst();
    }

    /** Returns whether the name ends like one of a file of a shop, wherever it lies. */
    static boolean looksLikeOne(String path) {
        return Arrays.stream(values()).anyMatch(kind -> path.endsWith(kind.extension));
    }

    private boolean fits(String path) {
        if (single()) {
            return path.equals(onlyName + extension);
        }
        String name = path.startsWith(folder) ? path.substring(folder.length()) : "";
        return name.length() > extension.length() && name.endsWith(extension) && name.indexOf('/') < 0 && !name.startsWith(".");
    }

    /** Returns the class of the object at the top. */
    public EClass rootClass() {
        return switch (this) {
            case SHOP -> BasePackage.Literals.SHOP;
            case STOCK -> StockPackage.Literals.STOCK;
            case GEAR -> FixturePackage.Literals.GEAR_STORE;
            case FLOOR -> FloorPackage.Literals.FLOOR;
            case JOBS -> JobPackage.Literals.JOB_BOOK;
            case CAR -> VehiclePackage.Literals.CAR;
            case DOLLY -> FixturePackage.Literals.DOLLY;
            default -> throw new IllegalStateException(name());
        };
    }
}
