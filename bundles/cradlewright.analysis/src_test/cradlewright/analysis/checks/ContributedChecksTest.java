package cradlewright.analysis.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

/** Checks of other bundles, in a registry that lives in memory and holds the extension point as this bundle declares it. */
class ContributedChecksTest {

    /** A check of another bundle. */
    public static final class YardCheck implements Check {
        @Override
        public CheckInfo info() {
            return new CheckInfo("yard.gate", "Is the gate shut?", "common practice, no source", "Mind the gate.", List.of(), List.of());
        }

        @Override
        public Scope scope() {
            return Scope.CAR;
        }

        @Override
        public List<Finding> examine(Subject subject, Reader reader) {
            return List.of();
        }
    }

    private static IExtensionRegistry registry(String... classes) throws IOException {
        Object token = new Object();
        IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), token, token);
        add(registry, "cradlewright.analysis", Files.readString(Path.of("plugin.xml")), token);
        StringBuilder xml = new StringBuilder("<plugin><extension point='cradlewright.analysis.checks'>");
        for (String name : classes) {
            xml.append("<check class='").append(name).append("'/>");
        }
        add(registry, "yard", xml.append("</extension></plugin>").toString(), token);
        return registry;
    }

    private static void add(IExtensionRegistry registry, String contributor, String xml, Object token) {
        assertTrue(registry.addContribution(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)),
                ContributorFactorySimple.createContributor(contributor), false, contributor, null, token));
    }

    private static String missing(Check check) {
        Finding finding = check.examine(new Subject(Scope.CAR, "car", Optional.empty(), "Car"), null).get(0);
        assertEquals(Verdict.CANT_SAY, finding.verdict());
        return finding.missing().get(0);
    }

    @Test
    void whatAnotherBundleAddsIsFound() throws IOException {
        List<Check> checks = ContributedChecks.Registry.checks(registry(YardCheck.class.getName()), Set.of());
        assertEquals(List.of("yard.gate"), checks.stream().map(check -> check.info().id()).toList());
    }

    @Test
    void whatCannotBeUsedSaysSoAndLeavesTheOthers() throws IOException {
        List<Check> checks = ContributedChecks.Registry.checks(
                registry("yard.Gone", String.class.getName(), YardCheck.class.getName(), YardCheck.class.getName()), Set.of());
        assertEquals(List.of("contributed.unusable-1", "contributed.unusable-2", "yard.gate", "contributed.unusable-4"),
                checks.stream().map(check -> check.info().id()).toList());
        assertTrue(missing(checks.get(0)).contains("yard.Gone"), () -> missing(checks.get(0)));
        assertTrue(missing(checks.get(1)).contains("java.lang.String is no check"));
        assertTrue(missing(checks.get(3)).contains("yard.gate is that of another check"));
    }

    @Test
    void anIdOfTheProgramIsNotTakenOver() throws IOException {
        List<Check> checks = ContributedChecks.Registry.checks(registry(YardCheck.class.getName()), Set.of("yard.gate"));
        assertEquals(List.of("contributed.unusable-1"), checks.stream().map(check -> check.info().id()).toList());
    }

    @Test
    void withoutARegistryThereAreOnlyTheChecksOfTheProgram() {
        assertEquals(List.of(), ContributedChecks.all(Set.of()));
        assertTrue(BuiltInChecks.catalogue().find("data.visit").isPresent());
    }

    @Test
    void withoutTheClassesOfTheRegistryThereAreNone() throws ReflectiveOperationException {
        Class<?> alone = new WithoutRegistry().loadClass(ContributedChecks.class.getName());
        assertEquals(List.of(), alone.getMethod("all", Set.class).invoke(null, Set.of()));
    }

    /** Loads the class anew where no class of the registry is to be found. */
    private static final class WithoutRegistry extends ClassLoader {
        WithoutRegistry() {
            super(ContributedChecksTest.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            if (name.startsWith("org.eclipse.core.runtime.")) {
                throw new ClassNotFoundException(name);
            }
            if (!name.startsWith(ContributedChecks.class.getName())) {
                return super.loadClass(name, resolve);
            }
            try (InputStream in = getResourceAsStream(name.replace('.', '/') + ".class")) {
                byte[] bytes = in.readAllBytes();
                return defineClass(name, bytes, 0, bytes.length);
            } catch (IOException e) {
                throw new ClassNotFoundException(name, e);
            }
        }
    }
}
