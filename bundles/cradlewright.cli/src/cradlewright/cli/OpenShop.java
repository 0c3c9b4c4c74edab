package cradlewright.cli;

import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Reads a shop's folder for a verb. */
final class OpenShop {

    private OpenShop() {
    }

    /** Opens the folder; throws BadInputException when it is none. */
    static ShopFolder folder(Path path) {
        if (!Files.isDirectory(path)) {
            throw new BadInputException(path + " is not a folder: name the folder that holds shop.cwshop");
        }
        if (!Files.isReadable(path) || !Files.isExecutable(path)) {
            throw new BadInputException(path + " cannot be read: check the rights on the folder");
        }
        return ShopFolder.open(path);
    }

    /** Reads the shop; what is wrong with the files goes to {@code err}, and an error among it throws BadInputException. */
    static ShopSnapshot snapshot(Path path, LocalDate day, PrintWriter err) {
        return snapshot(folder(path), day, err);
    }

    /** Reads an open shop in the same way. */
    static ShopSnapshot snapshot(ShopFolder folder, LocalDate day, PrintWriter err) {
        FileProblems problems = FileProblems.of(folder);
        problems.lines().forEach(err::println);
        if (problems.serious()) {
            throw new BadInputException("the files of the shop are not in order (" + problems.count()
                    + "): mend what is listed above, from the top, and run again");
        }
        List<FileRoot> roots = folder.files().stream().map(ShopFile::root).flatMap(root -> root.stream()).toList();
        try {
            return ShopImporter.importShop(roots, day, LocalDate.now(), 1);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("shop.cwshop: " + e.getMessage());
        }
    }
}
