package cradlewright.analysis.importer;

import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.model.stock.ShimType;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.quantity.Measured;
import java.util.Optional;

/** Reads shims; those of a kind in stock take their thickness from there. */
final class ShimImporter {

    private ShimImporter() {
    }

    static Optional<ShimStackFacts> stack(ShimStack stack) {
        return Optional.ofNullable(stack).map(given -> new ShimStackFacts(Identity.each(given.getShims(), ShimImporter::shim)));
    }

    private static ShimFacts shim(Shim shim) {
        Optional<String> stockId = Identity.reference(shim.getShim());
        return new ShimFacts(stockId, Values.si(thickness(shim, stockId)), Values.count(shim.getCount()));
    }

    private static Measured thickness(Shim shim, Optional<String> stockId) {
        ShimType type = shim.getShim();
        return stockId.isPresent() ? type.getThickness() : shim.getLoose();
    }
}
