package cradlewright.ui.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.fixture.WeldedJoint;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.VehiclePackage;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EcoreFactory;
import org.junit.jupiter.api.Test;

/** Every class that people may meet has a word, and things without a name are still told apart. */
class NounsTest {

    /** Words that mean something else in the trade. */
    private static final List<String> AVOIDED = List.of("outrigger", "panel", "post", "lead", "frame", "seat", "bay");

    private static Stream<EClass> classes() {
        List<EPackage> all = List.of(BasePackage.eINSTANCE, VehiclePackage.eINSTANCE, FixturePackage.eINSTANCE, FloorPackage.eINSTANCE,
                JobPackage.eINSTANCE, StockPackage.eINSTANCE);
        return all.stream().flatMap(each -> each.getEClassifiers().stream()).filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(each -> !each.isAbstract());
    }

    @Test
    void everyThingAndEveryListHasItsWord() {
        Set<String> without = new TreeSet<>();
        classes().forEach(each -> {
            if (silent(() -> Nouns.kind(each))) {
                without.add(each.getName());
            }
            each.getEAllContainments().stream().filter(EReference::isMany).filter(list -> silent(() -> Nouns.heading(list)))
                    .forEach(list -> without.add(list.getEContainingClass().getName() + "." + list.getName()));
        });
        assertEquals(Set.of(), without);
    }

    private static boolean silent(Runnable says) {
        try {
            says.run();
            return false;
        } catch (IllegalArgumentException e) {
            return true;
        }
    }

    @Test
    void wordsThatMeanSomethingElseToTheTradeAreAvoided() {
        ResourceBundle words = ResourceBundle.getBundle("cradlewright.ui.words.nouns");
        for (String key : words.keySet()) {
            for (String word : words.getString(key).toLowerCase(Locale.ROOT).split("\\W+")) {
                assertFalse(AVOIDED.contains(word), key + "=" + words.getString(key));
            }
        }
    }

    @Test
    void aThingWithoutANameIsNumberedAmongItsSiblings() {
        WeldedJoint joint = FixtureFactory.eINSTANCE.createWeldedJoint();
        joint.getWelds().add(FixtureFactory.eINSTANCE.createWeld());
        joint.getWelds().add(FixtureFactory.eINSTANCE.createWeld());
        assertEquals("weld 2", Nouns.name(joint.getWelds().get(1)));
        assertEquals("weld 2", Nouns.kindAndName(joint.getWelds().get(1)));
        var mount = VehicleFactory.eINSTANCE.createMount();
        mount.setName("4L");
        assertEquals("body mount 4L", Nouns.kindAndName(mount));
        mount.setName(" ");
        assertEquals("body mount", Nouns.name(mount));
    }

    @Test
    void aWordThatIsMissingIsAFaultOfTheProgram() {
        EClass unknown = EcoreFactory.eINSTANCE.createEClass();
        unknown.setName("Unknown");
        assertThrows(IllegalArgumentException.class, () -> Nouns.kind(unknown));
    }
}
