package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.QuantityFormatException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** The rules for nouns that each avoid a migration later, held against the whole metamodel. */
class MetamodelTest {

    private static final List<EPackage> PACKAGES = Arrays.stream(FileKind.values())
            .map(kind -> kind.rootClass().getEPackage()).distinct().toList();

    private static Stream<EClass> classes() {
        return PACKAGES.stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance)
                .map(EClass.class::cast);
    }

    private static Stream<EAttribute> attributes() {
        return classes().flatMap(c -> c.getEAttributes().stream());
    }

    @Test
    void sixPackagesWithNamesForEver() {
        assertEquals(List.of("urn:cradlewright:base", "urn:cradlewright:fixture", "urn:cradlewright:floor",
                "urn:cradlewright:job", "urn:cradlewright:stock", "urn:cradlewright:vehicle"),
                PACKAGES.stream().map(EPackage::getNsURI).sorted().toList());
    }

    @Test
    void nothingHasADefault() {
        assertTrue(attributes().count() > 150);
        attributes().forEach(attribute -> assertNull(attribute.getDefaultValueLiteral(), attribute::toString));
    }

    @Test
    void numbersAndWordsAreMissingUntilSomebodySaysThem() {
        attributes().filter(attribute -> attribute != BasePackage.Literals.FILE_ROOT__SCHEMA).forEach(attribute -> {
            assertFalse(attribute.getEAttributeType() instanceof EEnum, () -> attribute + " is never missing");
            Class<?> type = attribute.getEAttributeType().getInstanceClass();
            assertTrue(type == boolean.class || !type.isPrimitive(), () -> attribute + " is never missing");
        });
    }

    @Test
    void containmentAndOppositesStayInsideAFile() {
        List<EClass> roots = Arrays.stream(FileKind.values()).map(FileKind::rootClass).toList();
        for (EReference reference : classes().flatMap(c -> c.getEReferences().stream()).toList()) {
            assertNull(reference.getEOpposite(), reference::toString);
            if (reference.isContainment()) {
                assertFalse(reference.isResolveProxies(), reference::toString);
                assertTrue(roots.stream().noneMatch(reference.getEReferenceType()::isSuperTypeOf), reference::toString);
            }
        }
    }

    @Test
    void listsOfValuesKeepEqualOnes() {
        attributes().filter(EAttribute::isMany).forEach(attribute -> assertFalse(attribute.isUnique(), attribute::toString));
    }

    @Test
    void everyPhysicalNumberHasASignRuleOrATypeThatMayBeNegative() {
        List<String> free = List.of("Angle", "Temperature");
        attributes().filter(attribute -> attribute.getEAttributeType().getInstanceClass() == Measured.class)
                .filter(attribute -> !free.contains(attribute.getEAttributeType().getName()))
                .filter(attribute -> attribute != FixturePackage.Literals.WELD__OFFSET)
                .forEach(attribute -> assertTrue(Rules.wantsPositive(attribute) || Rules.refusesNegative(attribute),
                        () -> attribute.getEContainingClass().getName() + "." + attribute.getName() + " has no sign rule"));
    }

    @Test
    void eachQuantityTypeTakesItsOwnDimensionOnlyAndHasALimit() {
        int seen = 0;
        for (var classifier : BasePackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EDataType type && type.getInstanceClass() == Measured.class) {
                seen++;
                Dimension own = Dimension.valueOf(EcoreUtil.getAnnotation(type, "urn:cradlewright:rules", "dimension"));
                assertTrue(Rules.most(type).isPresent(), type.getName());
                for (Dimension dimension : Dimension.values()) {
                    String text = Measured.of(12.5, dimension.stored()).text();
                    if (dimension == own) {
                        assertEquals(text, EcoreUtil.convertToString(type, EcoreUtil.createFromString(type, text)),
                                type.getName());
                    } else {
                        assertThrows(QuantityFormatException.class, () -> EcoreUtil.createFromString(type, text), type.getName());
                    }
                }
            }
        }
        assertEquals(Dimension.values().length, seen);
    }

    @Test
    void otherUnitsAreReadAndKeptInTheUnitOfTheFiles() {
        EDataType mass = BasePackage.Literals.MASS;
        // 1 lb is 0.45359237 kg exactly: international yard and pound agreement, 1959.
        assertEquals("4.5359237 kg u 0.45359237 weighed",
                EcoreUtil.convertToString(mass, EcoreUtil.createFromString(mass, "10 lb u 1 weighed")));
        assertEquals("0.3", EcoreUtil.convertToString(BasePackage.Literals.RATIO,
                EcoreUtil.createFromString(BasePackage.Literals.RATIO, "30 %")));
    }

    @Test
    void datesWantFourDigitsForTheYear() {
        for (String wrong : List.of("", "31.3.2026", "2026-3-31", "2026-02-30", "+12026-01-01", "2026-03-31T10:00")) {
            assertThrows(QuantityFormatException.class, () -> EcoreUtil.createFromString(BasePackage.Literals.DATE, wrong),
                    wrong);
        }
        assertNotNull(EcoreUtil.createFromString(BasePackage.Literals.LOCAL_MOMENT, "2026-03-31T10:00"));
        assertThrows(QuantityFormatException.class,
                () -> EcoreUtil.createFromString(BasePackage.Literals.LOCAL_MOMENT, "2026-03-31"));
    }
}
