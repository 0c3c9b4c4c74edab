package cradlewright.acceptance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundles know each other in one direction only; what is not listed here is not allowed. */
class LayeringTest {

    private static final Map<String, Set<String>> MAY_REQUIRE = Map.ofEntries(
            Map.entry("cradlewright.model", Set.of("org.eclipse.emf.ecore", "org.eclipse.emf.ecore.xmi")),
            Map.entry("cradlewright.model.edit", Set.of("cradlewright.model")),
            Map.entry("cradlewright.mechanics", Set.of("org.hipparchus.core")),
            Map.entry("cradlewright.analysis", Set.of("cradlewright.model", "cradlewright.mechanics", "org.eclipse.equinox.common",
                    "org.eclipse.equinox.registry")),
            Map.entry("cradlewright.report", Set.of("cradlewright.analysis", "com.google.gson")),
            Map.entry("cradlewright.cli", Set.of("cradlewright.report", "org.eclipse.equinox.app", "org.eclipse.core.runtime", "picocli")),
            Map.entry("cradlewright.demo", Set.of()),
            Map.entry("cradlewright.gef.bridge", Set.of("org.eclipse.gef")),
            Map.entry("cradlewright.ui", Set.of("cradlewright.model.edit", "cradlewright.report", "org.eclipse.core.runtime",
                    "org.eclipse.core.resources", "org.eclipse.ui", "org.eclipse.ui.ide", "org.eclipse.ui.views",
                    "org.eclipse.ui.views.properties.tabbed", "org.eclipse.ui.forms")),
            Map.entry("cradlewright.diagrams", Set.of("cradlewright.ui", "cradlewright.report", "cradlewright.model.edit",
                    "org.eclipse.core.runtime", "org.eclipse.core.resources", "org.eclipse.ui", "org.eclipse.ui.ide",
                    "org.eclipse.ui.views", "org.eclipse.draw2d", "org.eclipse.gef")),
            Map.entry("cradlewright.ui.tests", Set.of("cradlewright.ui", "cradlewright.diagrams", "org.eclipse.core.runtime",
                    "org.eclipse.core.resources", "org.eclipse.ui", "org.eclipse.ui.ide", "org.eclipse.ui.views", "org.eclipse.draw2d",
                    "org.eclipse.gef", "junit-jupiter-api")));

    /** The bundles that have to do with the window; the tests drive all of it. */
    private static final Set<String> OF_THE_WINDOW = Set.of("cradlewright.ui", "cradlewright.diagrams", "cradlewright.gef.bridge",
            "cradlewright.ui.tests");

    private static final Pattern WINDOW_SYSTEM =
            Pattern.compile("org\\.eclipse\\.(swt|jface|ui|gef|draw2d)([._].*|$)|javax?\\.swing.*|java\\.awt.*");

    private static final Pattern IMPORT = Pattern.compile("^import (?:static )?([\\w.]+);", Pattern.MULTILINE);

    @Test
    void everyBundleRequiresOnlyWhatItMayKnow() throws IOException {
        Map<String, Set<String>> found = requirements();
        assertEquals(MAY_REQUIRE.keySet(), found.keySet(), "a new bundle needs its line in this test");
        found.forEach((bundle, required) -> {
            Set<String> surplus = new TreeSet<>(required);
            surplus.removeAll(MAY_REQUIRE.get(bundle));
            assertEquals(Set.of(), surplus, bundle + " must not know these");
        });
    }

    @Test
    void numericCodeKnowsNoModelAndOnlyTheWindowKnowsTheWindowSystem() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path source : sources()) {
            String path = Project.root().relativize(source).toString();
            Matcher imports = IMPORT.matcher(Files.readString(source));
            while (imports.find()) {
                String name = imports.group(1);
                if (WINDOW_SYSTEM.matcher(name).matches() && !OF_THE_WINDOW.contains(bundleOf(source))) {
                    wrong.add(path + " imports " + name);
                }
                if (path.contains("cradlewright.mechanics/") && !name.startsWith("java.") && !name.startsWith("org.hipparchus.")
                        && !name.startsWith("cradlewright.mechanics.")) {
                    wrong.add(path + " imports " + name);
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** Objects become records in the importer, and records objects in the write-back; between the two there are records only. */
    @Test
    void checksSeeRecordsAndNeverTheEditableModel() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path source : sources()) {
            String path = Project.root().relativize(source).toString().replace('\\', '/');
            if (path.contains("cradlewright.analysis/src/") && !path.matches(".*/analysis/(importer|writeback)/.*")
                    && Files.readString(source).contains("import org.eclipse.emf.")) {
                wrong.add(path);
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theCommandLineProductHoldsNoWindowSystem() throws IOException {
        List<String> plugins;
        try (Stream<Path> files = Files.list(Project.product().resolve("plugins"))) {
            plugins = files.map(file -> file.getFileName().toString()).sorted().toList();
        }
        assertTrue(plugins.stream().anyMatch(name -> name.startsWith("cradlewright.cli_")), () -> "not the product: " + plugins);
        for (String name : plugins) {
            assertFalse(WINDOW_SYSTEM.matcher(name).matches(), name);
        }
    }

    @Test
    void theWindowIsThereForThreeSystemsAndHoldsTheCommandLineToo() throws IOException {
        for (String system : List.of("linux/gtk/x86_64", "win32/win32/x86_64", "macosx/cocoa/aarch64")) {
            Path materialized = Project.root().resolve("releng/product/target/products/cradlewright.workbench").resolve(system);
            Path product = system.startsWith("macosx") ? materialized.resolve("Cradlewright.app/Contents/Eclipse") : materialized;
            List<String> plugins;
            try (Stream<Path> files = Files.list(product.resolve("plugins"))) {
                plugins = files.map(file -> file.getFileName().toString()).sorted().toList();
            }
            for (String wanted : List.of("cradlewright.ui", "cradlewright.diagrams", "cradlewright.cli", "cradlewright.gef.bridge",
                    "org.eclipse.gef", "org.eclipse.swt." + widgets(system))) {
                assertTrue(plugins.stream().anyMatch(name -> name.startsWith(wanted + "_")), () -> wanted + " in " + system + ": "
                        + plugins);
            }
            assertEquals(1, plugins.stream().filter(name -> name.startsWith("org.eclipse.swt.") && name.matches(".*(gtk|win32|cocoa).*"))
                    .count(), "widgets of one system only: " + system);
            assertTrue(Files.exists(product.resolve("cradlewright-workbench")), system);
        }
    }

    private static String widgets(String system) {
        String[] parts = system.split("/");
        return parts[1] + "." + parts[0] + "." + parts[2];
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        Set<Path> silent = new TreeSet<>();
        for (Path source : sources()) {
            if (!Files.exists(source.resolveSibling("package-info.java"))) {
                silent.add(Project.root().relativize(source.getParent()));
            }
        }
        assertEquals(Set.of(), silent);
    }

    private static String bundleOf(Path source) {
        return Project.root().resolve("bundles").relativize(source).getName(0).toString();
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (Path bundle : bundles()) {
            Path folder = bundle.resolve("src");
            if (Files.isDirectory(folder)) {
                try (Stream<Path> files = Files.walk(folder)) {
                    files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
                }
            }
        }
        assertFalse(sources.isEmpty());
        return sources;
    }

    private static List<Path> bundles() throws IOException {
        try (Stream<Path> folders = Files.list(Project.root().resolve("bundles"))) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    private static Map<String, Set<String>> requirements() throws IOException {
        Map<String, Set<String>> found = new TreeMap<>();
        for (Path bundle : bundles()) {
            try (InputStream in = Files.newInputStream(bundle.resolve("META-INF/MANIFEST.MF"))) {
                Attributes attributes = new Manifest(in).getMainAttributes();
                Set<String> names = new TreeSet<>();
                for (String header : List.of("Require-Bundle", "Fragment-Host")) {
                    String value = attributes.getValue(header);
                    if (value != null) {
                        for (String clause : value.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
                            names.add(clause.split(";")[0].trim());
                        }
                    }
                }
                assertEquals(null, attributes.getValue("Import-Package"), bundle + ": list bundles, so that this test sees them");
                found.put(bundle.getFileName().toString(), names);
            }
        }
        return found;
    }
}
