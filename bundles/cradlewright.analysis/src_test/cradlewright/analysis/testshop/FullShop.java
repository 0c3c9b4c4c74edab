package cradlewright.analysis.testshop;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.ExtendedMetaData;

/** A shop with one object of each class of the model and something in each of their features, made from the model itself. */
public final class FullShop {

    /** Packages of the model. */
    public static final List<EPackage> PACKAGES = List.of(BasePackage.eINSTANCE, StockPackage.eINSTANCE, VehiclePackage.eINSTANCE,
            FixturePackage.eINSTANCE, FloorPackage.eINSTANCE, JobPackage.eINSTANCE);

    /** A fabric, a thread and a name alike. */
    private static final String TEXT = "A193";

    private final List<EObject> objects = new ArrayList<>();
    private final List<EObject> roots = new ArrayList<>();

    /** Makes it. */
    public FullShop() {
        for (EClass root : List.of(BasePackage.Literals.SHOP, StockPackage.Literals.STOCK, VehiclePackage.Literals.CAR,
                FixturePackage.Literals.DOLLY, FixturePackage.Literals.GEAR_STORE, FloorPackage.Literals.FLOOR,
                JobPackage.Literals.JOB_BOOK)) {
            roots.add(make(root));
        }
        objects.forEach(this::refer);
    }

    /** Returns the tops of the files. */
    public List<EObject> roots() {
        return roots;
    }

    /** Returns all objects, owners before what they own. */
    public List<EObject> objects() {
        return objects;
    }

    private EObject make(EClass type) {
        EObject object = EcoreUtil.create(type);
        objects.add(object);
        type.getEAllAttributes().forEach(attribute -> fill(object, attribute));
        for (EReference reference : type.getEAllContainments()) {
            List<EObject> parts = concrete(reference.getEReferenceType()).stream().map(this::make).toList();
            object.eSet(reference, reference.isMany() ? parts : parts.get(0));
        }
        return object;
    }

    private void fill(EObject object, EAttribute attribute) {
        Object value = attribute.isID() ? "id-" + objects.size() : value(attribute);
        object.eSet(attribute, attribute.isMany() ? List.of(value) : value);
    }

    private static Object value(EAttribute attribute) {
        EDataType type = attribute.getEAttributeType();
        Class<?> java = type.getInstanceClass();
        if (java == Measured.class) {
            String dimension = EcoreUtil.getAnnotation(type, "urn:cradlewright:rules", "dimension");
            double number = List.of("tightMargin", "frictionLow").contains(attribute.getName()) ? 0.2 : 1.25;
            return Measured.of(number, Dimension.valueOf(dimension).stored());
        }
        if (java == Position.class) {
            return Position.of(1000, 2000, 3000);
        }
        if (java == Direction.class) {
            return new Direction(1, 0, 0);
        }
        if (java == LocalDate.class) {
            return LocalDate.of(2026, 3, 1);
        }
        if (java == LocalDateTime.class) {
            return LocalDateTime.of(2026, 3, 1, 8, 0);
        }
        if (java == String.class) {
            return TEXT;
        }
        if (java == int.class || java == Integer.class) {
            return 2;
        }
        if (java == boolean.class || java == Boolean.class) {
            return attribute.getDefaultValue() == null ? Boolean.FALSE : Boolean.TRUE;
        }
        return words(type).get(0);
    }

    /** Returns all words that an enumeration, or the type of an enumeration that may be missing, knows; else nothing. */
    public static List<Object> words(EDataType type) {
        EClassifier base = type instanceof EEnum ? type : ExtendedMetaData.INSTANCE.getBaseType(type);
        return base instanceof EEnum words
                ? words.getELiterals().stream().map(literal -> (Object) literal.getInstance()).toList() : List.of();
    }

    private static List<EClass> concrete(EClass type) {
        return PACKAGES.stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance)
                .map(EClass.class::cast).filter(c -> !c.isAbstract() && type.isSuperTypeOf(c)).toList();
    }

    private void refer(EObject object) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (!reference.isContainment()) {
                EObject target = objects.stream().filter(reference.getEReferenceType()::isInstance).findFirst().orElseThrow();
                object.eSet(reference, reference.isMany() ? List.of(target) : target);
            }
        }
    }
}
