package cradlewright.analysis.checks;

import cradlewright.analysis.check.Check;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;

/**
 * The checks that other bundles add through the extension point {@code cradlewright.analysis.checks}. Without a registry, as in
 * plain Java, there are none.
 */
public final class ContributedChecks {

    private ContributedChecks() {
    }

    /**
     * Returns the contributed checks in the order of the registry.
     *
     * @param taken ids that contributed checks must not use
     * @return one for each contribution; one that cannot be used is replaced by a check that says so
     */
    public static List<Check> all(Set<String> taken) {
        try {
            return Registry.checks(taken);
        } catch (NoClassDefFoundError e) {
            // The bundles of the registry are optional: without their classes nobody can have contributed anything.
            return List.of();
        }
    }

    /** All that touches classes of the registry, so that they are looked for only here. */
    static final class Registry {

        private static final String POINT = "cradlewright.analysis.checks";

        private Registry() {
        }

        static List<Check> checks(Set<String> taken) {
            IExtensionRegistry registry = RegistryFactory.getRegistry();
            return registry == null ? List.of() : checks(registry, taken);
        }

        static List<Check> checks(IExtensionRegistry registry, Set<String> taken) {
            Set<String> ids = new HashSet<>(taken);
            List<Check> checks = new ArrayList<>();
            for (IConfigurationElement element : registry.getConfigurationElementsFor(POINT)) {
                Check check = create(element, ids, checks.size() + 1);
                ids.add(check.info().id());
                checks.add(check);
            }
            return checks;
        }

        private static Check create(IConfigurationElement element, Set<String> ids, int number) {
            String who = element.getContributor().getName();
            try {
                if (!(element.createExecutableExtension("class") instanceof Check check)) {
                    return new UnusableCheck(number, who, element.getAttribute("class") + " is no check");
                }
                return ids.contains(check.info().id())
                        ? new UnusableCheck(number, who, "its id " + check.info().id() + " is that of another check") : check;
            } catch (CoreException | RuntimeException e) {
                return new UnusableCheck(number, who, String.valueOf(e.getMessage()));
            }
        }
    }
}
