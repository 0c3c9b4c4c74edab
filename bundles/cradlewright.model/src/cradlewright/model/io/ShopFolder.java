package cradlewright.model.io;

import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.floor.Floor;
import cradlewright.model.job.JobBook;
import cradlewright.model.stock.Stock;
import cradlewright.model.vehicle.Car;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;

/**
 * A shop in memory: one folder, its files and their objects. Only the thread that owns the shop may touch its objects,
 * even to read.
 */
public final class ShopFolder {

    private final Path directory;
    private final ShopIndex index = new ShopIndex();
    private final ShopResourceSet resources = new ShopResourceSet(index);
    private final List<ShopFile> files = new ArrayList<>();
    private final List<ReadProblem> problems = new ArrayList<>();

    /** Begins an empty shop in a folder, which need not exist yet and is not looked into. */
    public ShopFolder(Path directory) {
        this.directory = directory;
    }

    /** Reads the shop in a folder; what is wrong with it is found in {@link #problems()}. */
    public static ShopFolder open(Path directory) {
        return new ShopReader(directory).read();
    }

    /**
     * Reads one file by itself, such as a copy kept elsewhere, into a shop that holds nothing else. References that lead to other files
     * stay as they are written.
     */
    public static ShopFolder alone(FileKind kind, String path, byte[] bytes) {
        return ShopReader.alone(kind, path, bytes);
    }

    /** Returns the folder. */
    public Path directory() {
        return directory;
    }

    /** Returns the files, the single ones first, then cars and dollies by name. */
    public List<ShopFile> files() {
        return Collections.unmodifiableList(files);
    }

    /** Returns what was wrong when the files were read, file by file; {@link ValueRules} judges the values. */
    public List<ReadProblem> problems() {
        return Collections.unmodifiableList(problems);
    }

    /** Returns the shop itself. */
    public Optional<Shop> shop() {
        return roots(Shop.class).stream().findFirst();
    }

    /** Returns the stock. */
    public Optional<Stock> stock() {
        return roots(Stock.class).stream().findFirst();
    }

    /** Returns the lifting gear. */
    public Optional<GearStore> gear() {
        return roots(GearStore.class).stream().findFirst();
    }

    /** Returns the floor. */
    public Optional<Floor> floor() {
        return roots(Floor.class).stream().findFirst();
    }

    /** Returns the jobs. */
    public Optional<JobBook> jobs() {
        return roots(JobBook.class).stream().findFirst();
    }

    /** Returns the cars in the order of their file names. */
    public List<Car> cars() {
        return roots(Car.class);
    }

    /** Returns the dollies in the order of their file names. */
    public List<Dolly> dollies() {
        return roots(Dolly.class);
    }

    /** Finds an object anywhere in the shop. */
    public Optional<EObject> find(String id) {
        return index.find(id);
    }

    /** Returns the file in which an object lies; empty when it lies in none. */
    public Optional<ShopFile> fileOf(EObject object) {
        Resource resource = object.eResource();
        return files.stream().filter(file -> file.resource() == resource).findFirst();
    }

    /** Returns the resource set, for recorders and adapters. */
    public ResourceSet resourceSet() {
        return resources;
    }

    /**
     * Puts a new file into the shop; it comes to disk when it is saved.
     *
     * @param name name without folder and extension; not used for kinds of which a shop has only one
     * @param root the object at the top, which gets the current schema number
     * @throws IllegalArgumentException when the shop has such a file, or the root is of another kind
     */
    public ShopFile add(FileKind kind, String name, FileRoot root) {
        String path = kind.path(name);
        if (!kind.rootClass().isInstance(root)) {
            throw new IllegalArgumentException(path + " wants " + Words.one(kind.rootClass()) + " at its top, found "
                    + Words.one(root.eClass()));
        }
        if (files.stream().anyMatch(file -> file.path().equalsIgnoreCase(path))) {
            throw new IllegalArgumentException("the shop already has a file " + path);
        }
        ShopFile file = addEmpty(kind, path);
        root.setSchema(Schema.CURRENT);
        file.resource().getContents().add(root);
        return file;
    }

    ShopFile addEmpty(FileKind kind, String path) {
        ShopResource resource = new ShopResource(path, index);
        resources.getResources().add(resource);
        ShopFile file = new ShopFile(kind, path, resource);
        files.add(file);
        return file;
    }

    void report(ReadProblem problem) {
        problems.add(problem);
    }

    private <T extends FileRoot> List<T> roots(Class<T> type) {
        return files.stream().flatMap(file -> file.root().stream()).filter(type::isInstance).map(type::cast).toList();
    }
}
