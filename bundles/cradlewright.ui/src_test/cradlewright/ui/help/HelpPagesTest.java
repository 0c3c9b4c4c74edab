package cradlewright.ui.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** The pages of the help can be shown, lead where they say, and leave no view, editor or library out. */
class HelpPagesTest {

    private static final Path PAGES = Path.of("help");
    private static final Path ROOT = Path.of("../..");
    private static final List<String> PLUGINS = List.of("plugin.xml", "../cradlewright.diagrams/plugin.xml");

    private static List<Path> pages() throws IOException {
        try (Stream<Path> all = Files.list(PAGES)) {
            return all.sorted().toList();
        }
    }

    private static Set<String> find(String pattern, String text) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        Set<String> found = new TreeSet<>();
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static Set<String> plugins(String pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        for (String plugin : PLUGINS) {
            found.addAll(find(pattern, Files.readString(Path.of(plugin))));
        }
        return found;
    }

    @Test
    void everyPageIsAFormWithATitle() throws Exception {
        assertTrue(pages().size() > 10);
        for (Path page : pages()) {
            Document form = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(page.toFile());
            assertEquals("form", form.getDocumentElement().getTagName(), page.toString());
            assertFalse(form.getElementsByTagName("span").item(0).getTextContent().isBlank(), page.toString());
        }
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        Set<String> commands = plugins("<command id=\"([^\"]+)\"");
        Set<String> views = plugins("<view id=\"([^\"]+)\"");
        for (Path page : pages()) {
            String text = Files.readString(page);
            for (String command : find("href=\"command:(cradlewright[^\"]+)\"", text)) {
                assertTrue(commands.contains(command), page + " names the command " + command);
            }
            for (String view : find("href=\"view:(cradlewright[^\"]+)\"", text)) {
                assertTrue(views.contains(view), page + " names the view " + view);
            }
            for (String other : find("href=\"page:([^\"]+)\"", text)) {
                assertTrue(Files.exists(PAGES.resolve(other + ".xml")), page + " names the page " + other);
            }
        }
    }

    @Test
    void everyViewAndEditorHasAPage() throws IOException {
        Set<String> without = plugins("<(?:view|editor) id=\"([^\"]+)\"");
        without.removeIf(id -> Files.exists(PAGES.resolve(id + ".xml")) || id.equals(HelpView.ID));
        assertEquals(Set.of(), without);
    }

    @Test
    void theLibrariesAreThoseOfTheListOfDependencies() throws IOException {
        String list = Files.readString(ROOT.resolve("releng/dependencies.md")).split("## In the products")[1].split("\n## ")[0];
        Matcher rows = Pattern.compile("(?m)^\\| `([^`]+)` \\| ([^|]+?) \\| ([^|]+?) \\|").matcher(list);
        Set<String> wanted = new TreeSet<>();
        while (rows.find()) {
            wanted.add(rows.group(1) + " " + rows.group(2) + ": " + rows.group(3));
        }
        assertTrue(wanted.size() > 50);
        assertEquals(wanted, find("<li>([^<]+)</li>", Files.readString(PAGES.resolve("libraries.xml"))));
    }
}
