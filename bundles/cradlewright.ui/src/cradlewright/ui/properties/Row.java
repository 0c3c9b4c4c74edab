package cradlewright.ui.properties;

import org.eclipse.emf.ecore.EStructuralFeature;

/** One detail of the things that are chosen, ready to be shown and edited. */
abstract sealed class Row permits TypedRow, QuantityRow, ChoiceRow, TickRow {

    private final Chosen chosen;
    private final EStructuralFeature feature;

    Row(Chosen chosen, EStructuralFeature feature) {
        this.chosen = chosen;
        this.feature = feature;
    }

    final Chosen chosen() {
        return chosen;
    }

    final Habits habits() {
        return chosen.habits();
    }

    final EStructuralFeature feature() {
        return feature;
    }

    final Section section() {
        return Section.of(feature);
    }

    final String label() {
        return FeatureWords.label(chosen.first(), feature);
    }

    /** Tells whether the things chosen have different values. */
    final boolean differ() {
        return chosen.differ(feature);
    }
}
