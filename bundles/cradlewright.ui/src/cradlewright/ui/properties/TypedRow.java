package cradlewright.ui.properties;

import cradlewright.quantity.QuantityFormatException;
import org.eclipse.emf.ecore.EStructuralFeature;

/** A detail that is written as text: words, whole numbers, days, directions, and several values after one another. */
public final class TypedRow extends Row {

    private final Typing typing;

    /** Makes the row. */
    public TypedRow(Chosen chosen, EStructuralFeature feature) {
        super(chosen, feature);
        this.typing = Typing.of(feature, chosen.habits());
    }

    /** Returns what is known; empty when nothing is, or when they differ. */
    public String text() {
        return chosen().shared(feature()).map(typing::write).orElse("");
    }

    /** Judges what is being typed; nothing typed is not known. */
    public Reply type(String text) {
        if (text.equals(text())) {
            return Reply.nothing();
        }
        try {
            Object value = typing.read(text);
            return chosen().change(feature(), old -> value, "");
        } catch (QuantityFormatException e) {
            return Reply.refused(e.what() + "; " + e.mend() + ".");
        }
    }
}
