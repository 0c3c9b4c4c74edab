package cradlewright.ui.words;

import cradlewright.model.base.Named;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** What the things of a shop are called: by their own name, else by their kind and number. */
public final class Nouns {

    private static final ResourceBundle WORDS = ResourceBundle.getBundle("cradlewright.ui.words.nouns");

    private Nouns() {
    }

    /** Returns the name that people gave it; without one its kind, numbered when it stands among others. */
    public static String name(EObject object) {
        if (object instanceof Named named && named.getName() != null && !named.getName().isBlank()) {
            return named.getName();
        }
        return kind(object.eClass()) + number(object);
    }

    /** Returns kind and name, such as {@code body mount 4L}. */
    public static String kindAndName(EObject object) {
        String name = name(object);
        String kind = kind(object.eClass());
        return name.startsWith(kind) ? name : kind + " " + name;
    }

    /** Returns the word for one thing of a class, in small letters. */
    public static String kind(EClass type) {
        return word(type.getName());
    }

    /** Returns the heading over what stands in a list, such as {@code Body mounts}. */
    public static String heading(EReference list) {
        return word(list.getEContainingClass().getName() + '.' + list.getName());
    }

    private static String number(EObject object) {
        if (object.eContainmentFeature() == null || !object.eContainmentFeature().isMany()) {
            return "";
        }
        Iterable<?> siblings = (Iterable<?>) object.eContainer().eGet(object.eContainmentFeature());
        int number = 0;
        for (Object sibling : siblings) {
            number++;
            if (sibling == object) {
                break;
            }
        }
        return " " + number;
    }

    private static String word(String key) {
        try {
            return WORDS.getString(key);
        } catch (MissingResourceException e) {
            throw new IllegalArgumentException("nouns.properties has no word for " + key, e);
        }
    }
}
