package cradlewright.ui.properties;

import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.util.Comparator;
import java.util.List;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Makes the rows for what is chosen. */
final class Rows {

    private Rows() {
    }

    /** Returns a row for each detail, heading by heading. */
    static List<Row> of(Chosen chosen) {
        return chosen.features().stream().map(feature -> row(chosen, feature)).sorted(Comparator.comparing(Row::section)).toList();
    }

    private static Row row(Chosen chosen, EStructuralFeature feature) {
        Class<?> held = feature.getEType().getInstanceClass();
        if (feature instanceof EReference reference) {
            return reference.isMany() ? new TickRow(chosen, reference) : new ChoiceRow(chosen, reference);
        }
        if (held == boolean.class || held == Boolean.class || Enumerator.class.isAssignableFrom(held)) {
            return new ChoiceRow(chosen, feature);
        }
        boolean quantity = held == Measured.class || held == Position.class;
        return quantity && !feature.isMany() ? new QuantityRow(chosen, feature)
                : new TypedRow(chosen, feature);
    }
}
