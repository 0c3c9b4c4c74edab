package cradlewright.model.io;

import cradlewright.model.base.Identified;
import cradlewright.model.base.Named;
import java.util.Locale;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;

/** Turns names of the metamodel and found text into words for messages. */
public final class Words {

    private static final int LONGEST_QUOTE = 60;

    private Words() {
    }

    /** Returns {@code sheet thickness} for {@code sheetThickness}. */
    static String of(ENamedElement element) {
        return element.getName().replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }

    /** Returns the words with an article before them. */
    static String one(ENamedElement element) {
        String words = of(element);
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    /** Returns kind and name of an object, as in {@code lift point "left sill"}; without an id also what it is in, whose id people see. */
    public static String name(EObject object) {
        String kind = of(object.eClass());
        if (object instanceof Named named && named.getName() != null && !named.getName().isBlank()) {
            return kind + " " + quote(named.getName());
        }
        boolean own = object instanceof Identified || object.eContainer() == null;
        return own ? kind : kind + " in " + name(object.eContainer());
    }

    /** Returns the id of the object or of the nearest one around it that has one; empty when there is none. */
    static String id(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Identified identified && identified.getId() != null) {
                return identified.getId();
            }
        }
        return "";
    }

    /** Quotes found text: control characters replaced, long text cut. */
    static String quote(String found) {
        String plain = found.replaceAll("\\p{Cntrl}", "?");
        return "\"" + (plain.length() > LONGEST_QUOTE ? plain.substring(0, LONGEST_QUOTE) + "..." : plain) + "\"";
    }
}
