package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What the numbers of a detail measure. */
final class Dimensions {

    private Dimensions() {
    }

    /** Returns what stands beside the data type in the metamodel. */
    static Dimension of(EStructuralFeature quantity) {
        return Dimension.valueOf(EcoreUtil.getAnnotation(quantity.getEType(), "urn:cradlewright:rules", "dimension"));
    }
}
