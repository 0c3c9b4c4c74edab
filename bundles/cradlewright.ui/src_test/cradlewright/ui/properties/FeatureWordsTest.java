package cradlewright.ui.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Every detail and every choice of the metamodel has a word, and every word is for something. */
class FeatureWordsTest {

    /** Words that mean something else in the trade. */
    private static final Pattern AVOIDED = Pattern.compile("\\b(outrigger|panel|post|lead|frame|seat)\\b");

    private static Stream<EClassifier> classifiers() {
        List<EPackage> all = List.of(BasePackage.eINSTANCE, VehiclePackage.eINSTANCE, FixturePackage.eINSTANCE, FloorPackage.eINSTANCE,
                JobPackage.eINSTANCE, StockPackage.eINSTANCE);
        return all.stream().flatMap(each -> each.getEClassifiers().stream());
    }

    private static Stream<Row> rows(EClass type) {
        EObject object = EcoreUtil.create(type);
        return Rows.of(new Chosen(new ShopFolder(Path.of("nowhere")), List.of(object), PropertyShop.METRIC)).stream();
    }

    private static Stream<EClass> classes() {
        return classifiers().filter(EClass.class::isInstance).map(EClass.class::cast).filter(each -> !each.isAbstract());
    }

    @Test
    void everyDetailOfEveryClassHasARowWithAWordAndAHeading() {
        assertEquals(List.of(), classes().flatMap(FeatureWordsTest::rows).filter(row -> row.label().isBlank() || row.section() == null)
                .toList());
    }

    @Test
    void noTwoDetailsOfAClassAreCalledTheSame() {
        classes().forEach(type -> {
            List<String> labels = rows(type).map(Row::label).toList();
            assertEquals(labels.stream().distinct().toList(), labels, type.getName());
        });
    }

    @Test
    void everyWordIsForSomething() {
        Set<String> wanted = new TreeSet<>();
        classes().forEach(type -> rows(type).forEach(row -> {
            wanted.add(row.feature().getName());
            wanted.add(type.getName() + "." + row.feature().getName());
        }));
        classifiers().filter(EEnum.class::isInstance).forEach(each -> Arrays.stream(each.getInstanceClass().getEnumConstants())
                .forEach(literal -> wanted.add(each.getName() + "." + ((Enum<?>) literal).name())));
        Set<String> without = new TreeSet<>(ResourceBundle.getBundle("cradlewright.ui.properties.features").keySet());
        without.removeAll(wanted);
        assertEquals(Set.of(), without);
    }

    @Test
    void everyChoiceHasAWordOfTheTrade() {
        Set<String> bad = new TreeSet<>();
        classifiers().filter(EEnum.class::isInstance).forEach(each -> Arrays.stream(each.getInstanceClass().getEnumConstants())
                .map(literal -> FeatureWords.choice((Enumerator) literal)).filter(word -> word.isBlank() || word.equals("bay")
                        || AVOIDED.matcher(word).find()).forEach(bad::add));
        classes().flatMap(FeatureWordsTest::rows).map(Row::label).filter(word -> AVOIDED.matcher(word).find()).forEach(bad::add);
        assertEquals(Set.of(), bad);
    }
}
