package cradlewright.analysis.testshop;

import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ShopFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** The demo shop as it lies in the sources. */
public final class DemoShop {

    private DemoShop() {
    }

    /** Returns its records on a day. */
    public static ShopSnapshot on(LocalDate day, long number) {
        ShopFolder folder = ShopFolder.open(Path.of("../cradlewright.demo/shop"));
        List<FileRoot> roots = folder.files().stream().flatMap(file -> file.root().stream()).toList();
        return ShopImporter.importShop(roots, day, number);
    }
}
