package cradlewright.ui.properties;

import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the details of things are called, and what may be chosen for them. */
public final class FeatureWords {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("cradlewright.ui.properties.features");

    private FeatureWords() {
    }

    /** Returns the word for a detail of an object, in small letters, such as {@code mass}. */
    public static String label(EObject object, EStructuralFeature feature) {
        String own = object.eClass().getName() + '.' + feature.getName();
        return WORDS.containsKey(own) ? WORDS.getString(own) : word(feature.getName());
    }

    /** Returns the word for one of a few that may be chosen. */
    static String choice(Enumerator literal) {
        return word(literal.getClass().getSimpleName() + '.' + ((Enum<?>) literal).name());
    }

    private static String word(String key) {
        try {
            return WORDS.getString(key);
        } catch (MissingResourceException e) {
            throw new IllegalArgumentException("features.properties has no word for " + key, e);
        }
    }
}
