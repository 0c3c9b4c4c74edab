package cradlewright.ui.recovery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.model.base.BasePackage;
import cradlewright.model.edit.Difference;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.VehiclePackage;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

/** Whatever differs, there is a word for it: a missing one would keep the window from asking. Ids cannot differ: they say what is what. */
class DifferenceWordsTest {

    private static final List<EPackage> NOUNS = List.of(BasePackage.eINSTANCE, VehiclePackage.eINSTANCE, FixturePackage.eINSTANCE,
            FloorPackage.eINSTANCE, JobPackage.eINSTANCE, StockPackage.eINSTANCE);

    @Test
    void everyDetailThatMayDifferHasAWord() {
        List<String> without = new ArrayList<>();
        for (EPackage nouns : NOUNS) {
            for (EClassifier classifier : nouns.getEClassifiers()) {
                if (classifier instanceof EClass type && !type.isAbstract()) {
                    for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
                        if (feature == BasePackage.Literals.IDENTIFIED__ID) {
                            continue;
                        }
                        try {
                            DifferenceWords.of(EcoreUtil.create(type), feature);
                        } catch (IllegalArgumentException e) {
                            without.add(type.getName() + "." + feature.getName() + ": " + e.getMessage());
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), without);
    }

    @Test
    void aChangedMassIsCalledSo() {
        Part part = VehicleFactory.eINSTANCE.createPart();
        part.setName("bonnet");
        assertEquals("changed: part bonnet (mass)", DifferenceWords.of(new Difference(Difference.Kind.CHANGED, part,
                List.of(VehiclePackage.Literals.PART__MASS))));
        assertEquals("new: part bonnet", DifferenceWords.of(new Difference(Difference.Kind.ADDED, part, List.of())));
    }
}
