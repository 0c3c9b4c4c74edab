package cradlewright.ui.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Path;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/**
 * The pages, in the folder {@code help} of this bundle or of one that has a view or editor: the file has the id of the part as its name. A
 * translation lies in {@code nl/LANGUAGE/help} of a fragment.
 */
final class HelpPages {

    /** The page that is shown where there is none of its own. */
    static final String GENERAL = "cradlewright.ui";

    private HelpPages() {
    }

    /** Returns the text of a page. */
    static Optional<String> find(String id) {
        Bundle here = FrameworkUtil.getBundle(HelpPages.class);
        for (Bundle bundle : here.getBundleContext().getBundles()) {
            if (id.startsWith(bundle.getSymbolicName())) {
                URL page = FileLocator.find(bundle, new Path("$nl$/help/" + id + ".xml"));
                if (page != null) {
                    return Optional.of(read(page));
                }
            }
        }
        URL page = FileLocator.find(here, new Path("$nl$/help/" + id + ".xml"));
        return Optional.ofNullable(page).map(HelpPages::read);
    }

    private static String read(URL page) {
        try (InputStream in = page.openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
