package cradlewright.ui.recovery;

import cradlewright.model.base.BasePackage;
import cradlewright.model.edit.Difference;
import cradlewright.ui.properties.FeatureWords;
import cradlewright.ui.words.Nouns;
import java.util.Locale;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** Says what differs in the words that the tree and the properties use. */
final class DifferenceWords {

    private DifferenceWords() {
    }

    static String of(Difference difference) {
        String thing = Nouns.kindAndName(difference.object());
        return switch (difference.kind()) {
            case ADDED -> NLS.bind(Messages.Differs_added, thing);
            case REMOVED -> NLS.bind(Messages.Differs_removed, thing);
            case CHANGED -> NLS.bind(Messages.Differs_changed, thing, difference.features().stream()
                    .map(feature -> of(difference.object(), feature)).distinct().collect(Collectors.joining(", ")));
        };
    }

    /** Returns the word for a detail; what lies in an object is called as the tree calls it. */
    static String of(EObject object, EStructuralFeature feature) {
        if (feature instanceof EReference reference && reference.isContainment()) {
            return (reference.isMany() ? Nouns.heading(reference) : Nouns.kind(reference.getEReferenceType())).toLowerCase(Locale.ROOT);
        }
        if (feature.getEContainingClass() == BasePackage.Literals.FILE_ROOT) {
            return Messages.Differs_form;
        }
        return FeatureWords.label(object, feature);
    }
}
