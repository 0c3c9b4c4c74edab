package cradlewright.verification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The list of libraries names exactly what the target and the poms pin. */
class LibrariesTest {

    private static final Path ROOT_POM = Project.root().resolve("pom.xml");

    private static Document xml(Path file) throws IOException, ParserConfigurationException, SAXException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static String child(Element element, String name) {
        NodeList found = element.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent().strip();
    }

    /** Returns "group:artifact version" of each library that the file pins; properties are those of the root pom. */
    private static Set<String> pinned(Path file) throws IOException, ParserConfigurationException, SAXException {
        Element properties = (Element) xml(ROOT_POM).getElementsByTagName("properties").item(0);
        NodeList dependencies = xml(file).getElementsByTagName("dependency");
        Set<String> all = new TreeSet<>();
        for (int i = 0; i < dependencies.getLength(); i++) {
            Element dependency = (Element) dependencies.item(i);
            String version = child(dependency, "version");
            if (version.startsWith("${") && !child(dependency, "groupId").equals("cradlewright")) {
                version = child(properties, version.substring(2, version.length() - 1));
            }
            if (!version.isEmpty() && !child(dependency, "groupId").equals("cradlewright")) {
                all.add(child(dependency, "groupId") + ":" + child(dependency, "artifactId") + " " + version);
            }
        }
        return all;
    }

    /** Returns "group:artifact version" of each row below a heading. */
    private static Set<String> listed(String heading) throws IOException {
        List<String> lines = Files.readAllLines(Project.root().resolve("releng/dependencies.md"));
        Set<String> all = new TreeSet<>();
        int from = lines.indexOf("## " + heading);
        assertTrue(from >= 0, "no heading " + heading);
        for (String line : lines.subList(from + 1, lines.size())) {
            if (line.startsWith("## ")) {
                break;
            }
            if (line.startsWith("| `")) {
                String[] cells = line.substring(2).split(" \\| ");
                assertEquals(4, cells.length, "library, version, licence and purpose: " + line);
                assertTrue(all.add(cells[0].replace("`", "") + " " + cells[1]), "twice: " + line);
            }
        }
        return all;
    }

    private static List<Path> below(String folder, String name) throws IOException {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> modules = Files.list(Project.root().resolve(folder))) {
            for (Path module : modules.sorted().toList()) {
                if (Files.exists(module.resolve(name))) {
                    found.add(module.resolve(name));
                }
            }
        }
        return found;
    }

    @Test
    void theTargetIsListed() throws IOException, ParserConfigurationException, SAXException {
        Set<String> pinned = new TreeSet<>();
        for (Path file : Sources.below(Project.root().resolve("releng/targetplatform"), ".target")) {
            pinned.addAll(pinned(file));
        }
        assertTrue(pinned.size() > 15, "libraries of the target: " + pinned);
        Set<String> listed = listed("In the products");
        assertTrue(listed.stream().noneMatch(name -> name.contains("junit")), "no product holds what only tests need");
        Set<String> forTests = listed("For building and testing");
        forTests.retainAll(pinned);
        listed.addAll(forTests);
        assertEquals(String.join("\n", pinned), String.join("\n", listed));
    }

    @Test
    void whatBuildsAndTestsIsListed() throws IOException, ParserConfigurationException, SAXException {
        Set<String> pinned = pinned(ROOT_POM);
        for (String folder : List.of("bundles", "features", "releng")) {
            for (Path pom : below(folder, "pom.xml")) {
                pinned.addAll(pinned(pom));
            }
        }
        pinned.removeAll(listed("In the products"));
        assertEquals(String.join("\n", pinned), String.join("\n", listed("For building and testing")));
    }
}
