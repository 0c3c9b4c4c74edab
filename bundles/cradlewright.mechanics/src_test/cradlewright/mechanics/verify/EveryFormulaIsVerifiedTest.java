package cradlewright.mechanics.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.castor.CastorFormulas;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.formula.Formula;
import cradlewright.mechanics.frame.FrameFormulas;
import cradlewright.mechanics.joint.JointFormulas;
import cradlewright.mechanics.lifting.LiftingFormulas;
import cradlewright.mechanics.mass.MassFormulas;
import cradlewright.mechanics.pad.PadFormulas;
import cradlewright.mechanics.section.SectionFormulas;
import cradlewright.mechanics.slab.SlabFormulas;
import cradlewright.mechanics.steel.SteelFormulas;
import cradlewright.mechanics.timber.TimberFormulas;
import cradlewright.mechanics.tipping.TippingFormulas;
import net.jqwik.api.Property;

/**
 * Every formula has a first route to its number (a row that is published, a closed form or common practice) and a second one
 * (an independent row, or a test named in {@code second-route.tsv}). What lacks one stands in {@code open-rows.tsv}, no more
 * and no less.
 */
class EveryFormulaIsVerifiedTest {

    private static final Map<Class<?>, List<Formula>> FAMILIES = Map.ofEntries(
            Map.entry(CastorFormulas.class, CastorFormulas.all()), Map.entry(ContactFormulas.class, ContactFormulas.all()),
            Map.entry(CoupledFormulas.class, CoupledFormulas.all()), Map.entry(FrameFormulas.class, FrameFormulas.all()),
            Map.entry(JointFormulas.class, JointFormulas.all()), Map.entry(LiftingFormulas.class, LiftingFormulas.all()),
            Map.entry(MassFormulas.class, MassFormulas.all()), Map.entry(PadFormulas.class, PadFormulas.all()),
            Map.entry(SectionFormulas.class, SectionFormulas.all()), Map.entry(SlabFormulas.class, SlabFormulas.all()),
            Map.entry(SteelFormulas.class, SteelFormulas.all()), Map.entry(TimberFormulas.class, TimberFormulas.all()),
            Map.entry(TippingFormulas.class, TippingFormulas.all()));

    private static final Path SOURCES = Path.of("src");
    private static final Path TESTS = Path.of("src_test");
    private static final Path LISTS = TESTS.resolve("cradlewright/mechanics/verify");
    private static final int FORMULA = 1;
    private static final int KIND = 7;

    private static Set<String> ids() {
        return FAMILIES.values().stream().flatMap(List::stream).map(Formula::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Rows of a table without comments and its head; each row must have the given number of filled columns. */
    private static List<String[]> table(Path file, int columns) {
        try {
            List<String[]> rows = Files.readAllLines(file).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .skip(1).map(line -> line.split("\t", -1)).toList();
            for (String[] row : rows) {
                assertEquals(columns, row.length, file + ": " + String.join("|", row));
                assertTrue(Arrays.stream(row).noneMatch(String::isBlank), file + ": empty column in " + String.join("|", row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String end) {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(file -> file.toString().endsWith(end)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String[]> checkValues() {
        return files(TESTS.resolve("check-values"), ".tsv").stream().flatMap(file -> table(file, 9).stream()).toList();
    }

    private static Map<String, Set<String>> kinds() {
        Map<String, Set<String>> kinds = new TreeMap<>();
        checkValues().forEach(row -> kinds.computeIfAbsent(row[FORMULA], id -> new TreeSet<>()).add(row[KIND]));
        return kinds;
    }

    private static List<String[]> secondRoutes() {
        return table(LISTS.resolve("second-route.tsv"), 4);
    }

    @Test
    void everyFamilyIsListed() {
        Set<String> inSources = files(SOURCES, "Formulas.java").stream()
                .map(file -> SOURCES.relativize(file).toString().replace(".java", "").replace('/', '.').replace('\\', '.'))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> listed = FAMILIES.keySet().stream().map(Class::getName).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(inSources, listed);
    }

    @Test
    void everyConstantIsInItsListAndNoIdStandsTwice() throws IllegalAccessException {
        for (Map.Entry<Class<?>, List<Formula>> family : FAMILIES.entrySet()) {
            List<Object> constants = new ArrayList<>();
            for (Field field : family.getKey().getFields()) {
                if (field.getType() == Formula.class) {
                    constants.add(field.get(null));
                }
            }
            assertEquals(Set.copyOf(constants), Set.copyOf(family.getValue()), family.getKey().getName());
        }
        assertEquals(FAMILIES.values().stream().mapToInt(List::size).sum(), ids().size());
    }

    @Test
    void everyRowNamesAFormula() {
        Set<String> unknown = new TreeSet<>(kinds().keySet());
        unknown.removeAll(ids());
        assertEquals(Set.of(), unknown);
    }

    @Test
    void secondRoutesAreTestsOfFormulasWithoutAnIndependentRow() throws ClassNotFoundException {
        Map<String, Set<String>> kinds = kinds();
        Set<String> seen = new TreeSet<>();
        for (String[] row : secondRoutes()) {
            assertTrue(ids().contains(row[0]) && seen.add(row[0]), row[0] + ": unknown, or stands twice");
            assertTrue(!kinds.getOrDefault(row[0], Set.of()).contains("independent"), row[0] + " has an independent row already");
            boolean isTest = Arrays.stream(Class.forName(row[1]).getDeclaredMethods()).anyMatch(method -> method.getName()
                    .equals(row[2]) && (method.isAnnotationPresent(Test.class) || method.isAnnotationPresent(Property.class)));
            assertTrue(isTest, row[1] + "." + row[2] + " is no test");
        }
    }

    @Test
    void whatIsMissingIsListedExactly() {
        Map<String, Set<String>> kinds = kinds();
        Set<String> byTest = secondRoutes().stream().map(row -> row[0]).collect(Collectors.toSet());
        Set<String> missing = new TreeSet<>();
        for (String id : ids()) {
            Set<String> has = kinds.getOrDefault(id, Set.of());
            if (!has.contains("published") && !has.contains("closed-form") && !has.contains("common-practice")) {
                missing.add(id + " first");
            }
            if (!has.contains("independent") && !byTest.contains(id)) {
                missing.add(id + " second");
            }
        }
        List<String> listed = table(LISTS.resolve("open-rows.tsv"), 3).stream().map(row -> row[0] + " " + row[1]).toList();
        assertEquals(String.join("\n", missing), String.join("\n", listed));
    }
}
