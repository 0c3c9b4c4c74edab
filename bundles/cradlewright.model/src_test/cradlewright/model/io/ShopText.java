package cradlewright.model.io;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Writes out every set feature of every object, by reflection and apart from the writer, to compare two shops. */
final class ShopText {

    private ShopText() {
    }

    static String of(ShopFile file) {
        StringBuilder text = new StringBuilder();
        Contents.walk(file.root().orElseThrow(), object -> text.append(line(object)).append('\n'));
        return text.toString();
    }

    private static String line(EObject object) {
        return object.eClass().getName() + object.eClass().getEAllStructuralFeatures().stream().filter(object::eIsSet)
                .map(feature -> " " + feature.getName() + "=" + value(object, feature)).collect(Collectors.joining());
    }

    private static String value(EObject object, EStructuralFeature feature) {
        Object value = object.eGet(feature);
        if (feature instanceof EReference reference && reference.isContainment()) {
            return value instanceof List<?> list ? list.size() + " inside" : "inside";
        }
        return value instanceof List<?> list
                ? list.stream().map(ShopText::one).toList().toString() : one(value);
    }

    private static String one(Object value) {
        return value instanceof EObject target ? Words.name(target) + " " + Words.id(target) : String.valueOf(value);
    }
}
