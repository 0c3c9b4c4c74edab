package cradlewright.model.io;

import cradlewright.model.base.Identified;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/** Reads the folder of a shop. Nothing that a file holds makes it throw: what is wrong becomes a {@link ReadProblem}. */
final class ShopReader {

    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";
    private static final String LAST_GOOD = "fetch the last good version from the folder .versions";

    private final Path directory;
    private final ShopFolder shop;
    private final ReferenceRules references;
    private final IdSource freshIds = IdSource.secure();

    ShopReader(Path directory) {
        this.directory = directory;
        this.shop = new ShopFolder(directory);
        this.references = new ReferenceRules(shop);
    }

    ShopFolder read() {
        if (!Files.isRegularFile(directory.resolve(FileKind.SHOP.path("")))) {
            shop.report(ReadProblem.of(FileKind.SHOP.path(""), 0, "there is no such file, so this folder is not a shop",
                    "open the folder that holds it, or begin a new shop", Severity.ERROR));
            return shop;
        }
        List.of("", FileKind.CAR.folder(), FileKind.DOLLY.folder()).forEach(this::reportStrays);
        for (FileKind kind : FileKind.values()) {
            for (String path : list(kind)) {
                readFile(shop.addEmpty(kind, path));
            }
        }
        reportDuplicates();
        references.check();
        return shop;
    }

    private List<String> list(FileKind kind) {
        if (kind.single()) {
            String path = kind.path("");
            return Files.exists(directory.resolve(path)) ? List.of(path) : List.of();
        }
        return names(kind.folder()).stream().filter(path -> FileKind.of(path).equals(Optional.of(kind))).toList();
    }

    private void reportStrays(String folder) {
        names(folder).stream().filter(path -> FileKind.looksLikeOne(path) && FileKind.of(path).isEmpty())
                .forEach(path -> shop.report(ReadProblem.of(path, 0, "a file of this kind does not belong here and was not read",
                        "move it to where the others of its kind are", Severity.WARNING)));
    }

    private List<String> names(String folder) {
        Path place = directory.resolve(folder);
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(place)) {
            return entries.map(entry -> folder + entry.getFileName()).sorted().toList();
        } catch (IOException e) {
            shop.report(ReadProblem.of(folder, 0, "the folder cannot be listed: " + e.getMessage(), "check the rights on it",
                    Severity.ERROR));
            return List.of();
        }
    }

    /** Reads one file by itself, from bytes that need not lie in the folder of a shop. */
    static ShopFolder alone(FileKind kind, String path, byte[] bytes) {
        ShopReader reader = new ShopReader(Path.of(""));
        ShopFile file = reader.shop.addEmpty(kind, path);
        try {
            reader.take(file, bytes);
        } catch (Refused refused) {
            reader.refuse(file, refused);
        }
        reader.reportDuplicates();
        return reader.shop;
    }

    private void readFile(ShopFile file) {
        try {
            take(file, bytes(file.path()));
        } catch (Refused refused) {
            refuse(file, refused);
        }
    }

    private void take(ShopFile file, byte[] bytes) throws Refused {
        file.setDigest(Digest.of(bytes));
        SafeXml.Result result = SafeXml.read(bytes, file.path());
        result.problems().forEach(shop::report);
        requireRoot(file.kind(), result.root());
        meetSchema(file, result.root());
        makeObjects(file, result.root());
    }

    private void refuse(ShopFile file, Refused refused) {
        file.close(ShopFile.State.REFUSED);
        shop.report(refused.in(file.path()));
    }

    private byte[] bytes(String path) throws Refused {
        Path place = directory.resolve(path);
        try {
            if (!place.toRealPath().startsWith(directory.toRealPath())) {
                throw new Refused(0, "the file is a link that leads out of the shop", "put the file itself here");
            }
            if (!Files.isRegularFile(place)) {
                throw new Refused(0, "this is not a file", "move it away");
            }
            try (InputStream in = Files.newInputStream(place)) {
                return in.readNBytes(SafeXml.MOST_BYTES + 1);
            }
        } catch (IOException e) {
            throw new Refused(0, "the file cannot be read: " + e, "check the rights on it, or " + LAST_GOOD);
        }
    }

    private static void requireRoot(FileKind kind, XmlElement root) throws Refused {
        EClass wanted = kind.rootClass();
        String name = wanted.getEPackage().getNsPrefix() + ":" + wanted.getName();
        int colon = root.name().indexOf(':');
        String prefix = root.name().substring(0, Math.max(colon, 0));
        String uri = root.attribute(colon < 0 ? "xmlns" : "xmlns:" + prefix).map(XmlElement.Attribute::value).orElse("");
        if (!root.name().substring(colon + 1).equals(wanted.getName()) || !uri.equals(wanted.getEPackage().getNsURI())) {
            throw new Refused(root.line(), "the first element is " + Words.quote(root.name()) + " of " + Words.quote(uri)
                    + ", " + name + " of " + wanted.getEPackage().getNsURI() + " is wanted here",
                    "put the file where its kind belongs, or " + LAST_GOOD);
        }
    }

    private void meetSchema(ShopFile file, XmlElement root) throws Refused {
        int schema = Schema.of(root);
        if (schema > Schema.CURRENT) {
            file.close(ShopFile.State.NEWER);
            shop.report(ReadProblem.of(file.path(), root.lineOf(Schema.ATTRIBUTE),
                    "the file has form " + schema + ", this program knows forms up to " + Schema.CURRENT
                            + "; it is shown as far as it is understood and cannot be changed here",
                    "use the newer version of the program that wrote it", Severity.WARNING));
        }
        if (schema < Schema.CURRENT) {
            for (Migration migration : Schema.upgrade(root, schema)) {
                shop.report(ReadProblem.of(file.path(), root.lineOf(Schema.ATTRIBUTE),
                        "the file was brought from form " + migration.from() + " to " + (migration.from() + 1) + ": "
                                + migration.what(),
                        "nothing to do: saving writes the new form", Severity.NOTE));
            }
        }
    }

    private void makeObjects(ShopFile file, XmlElement root) throws Refused {
        LoadProblems problems = new LoadProblems(file);
        try {
            file.resource().load(root);
        } catch (RuntimeException e) {
            // The loader of the platform answers ill-formed references with various unchecked exceptions.
            file.resource().getContents().clear();
            throw new Refused(root.line(), "the elements cannot be made into objects: " + e.getMessage(), LAST_GOOD);
        }
        problems.list().forEach(shop::report);
        file.root().ifPresent(top -> reportIds(file, top));
    }

    private void reportIds(ShopFile file, EObject top) {
        Contents.walk(top, object -> {
            if (!(object instanceof Identified identified)) {
                return;
            }
            if (identified.getId() == null || identified.getId().isEmpty()) {
                shop.report(file.problem(object, "id", "the id is missing", "write id=\"" + freshIds.next() + "\" into it",
                        Severity.ERROR));
            } else if (!identified.getId().matches(ID)) {
                file.close(ShopFile.State.INCOMPLETE);
                shop.report(file.problem(object, "id", "the id " + Words.quote(identified.getId())
                        + " is not made of up to 64 letters, digits, dots, hyphens and underscores",
                        "write id=\"" + freshIds.next() + "\" and change what refers to it", Severity.ERROR));
            }
        });
    }

    private void reportDuplicates() {
        Map<String, String> first = new HashMap<>();
        for (ShopFile file : List.copyOf(shop.files())) {
            file.root().ifPresent(top -> Contents.walk(top, object -> reportDuplicate(file, object, first)));
        }
    }

    private void reportDuplicate(ShopFile file, EObject object, Map<String, String> first) {
        if (!(object instanceof Identified identified) || identified.getId() == null) {
            return;
        }
        Optional<String> other = Optional.ofNullable(
                first.putIfAbsent(identified.getId(), Words.name(object) + " in " + file.path() + ":" + file.lineOf(object)));
        if (other.isPresent()) {
            file.close(ShopFile.State.INCOMPLETE);
            shop.report(file.problem(object, "id", "the id " + Words.quote(identified.getId()) + " is already that of "
                    + other.get(),
                    "give one of them the new id \"" + freshIds.next() + "\" and check what refers to it", Severity.ERROR));
        }
    }
}
