package cradlewright.acceptance;

import java.nio.file.Path;

/** Where things lie, seen from the folder of this module. */
final class Project {

    private Project() {
    }

    /** Returns the root of the project. */
    static Path root() {
        return Path.of("").toAbsolutePath().getParent().getParent();
    }

    /** Returns the folder of the materialised command line product for Linux. */
    static Path product() {
        return root().resolve("releng/product/target/products/cradlewright.headless/linux/gtk/x86_64");
    }

    /** Returns the folder of the materialised product with the window for Linux. */
    static Path workbench() {
        return root().resolve("releng/product/target/products/cradlewright.workbench/linux/gtk/x86_64");
    }

    /** Returns the folder of the demo shop. */
    static Path demoShop() {
        return root().resolve("bundles/cradlewright.demo/shop");
    }
}
