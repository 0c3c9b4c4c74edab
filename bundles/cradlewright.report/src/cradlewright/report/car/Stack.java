package cradlewright.report.car;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.report.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies under a place on the car, from the fixture up, with heights in m.
 *
 * @param foot height of what the fixture stands on; nothing when the support is on no fixture or that is not known
 * @param layers from the bottom to the top; empty when the height of the fixture is not known
 */
record Stack(Optional<Double> foot, List<Layer> layers) {

    /** What a layer is. */
    enum Sort {
        FIXTURE, PAD, SHIM
    }

    /**
     * One thing in the stack.
     *
     * @param bottom height of its lower face, m
     * @param top height of its upper face, m
     * @param width along the car, m; nothing when nobody wrote it down
     */
    record Layer(Sort sort, double bottom, double top, Optional<Double> width) {
    }

    static Stack under(Support support, VisitSight sight) {
        Optional<DollyFacts> dolly = sight.standing().dolly();
        if (!(support.holder() instanceof Holder.OnFixture on) || dolly.isEmpty()) {
            return new Stack(Optional.empty(), List.of());
        }
        FixtureFacts fixture = on.fixture();
        Optional<Double> foot = dolly.get().base(fixture).map(base -> base.z() + fixture.offset().z());
        if (foot.isEmpty() || fixture.height().isEmpty()) {
            return new Stack(foot, List.of());
        }
        List<Layer> layers = new ArrayList<>();
        double top = foot.get() + fixture.height().get().si();
        layers.add(new Layer(Sort.FIXTURE, foot.get(), top, Optional.empty()));
        Optional<StockFacts.Pad> pad = support.pad();
        if (pad.isPresent() && pad.get().thickness().isPresent()) {
            double above = top + pad.get().thickness().get().si();
            layers.add(new Layer(Sort.PAD, top, above, pad.get().length().map(Value::si)));
            top = above;
        }
        for (ShimFacts shim : support.shims().map(ShimStackFacts::shims).orElse(List.of())) {
            Optional<Double> width = sight.stock(StockFacts.Shim.class, shim.stockId()).flatMap(StockFacts.Shim::length).map(Value::si);
            for (int i = 0; i < shim.count().orElse(0) && shim.thickness().isPresent(); i++) {
                double above = top + shim.thickness().get().si();
                layers.add(new Layer(Sort.SHIM, top, above, width));
                top = above;
            }
        }
        return new Stack(foot, layers);
    }

    /** Returns how high the shims are, or that nobody wrote it down. */
    static String shims(Support support, Words words, Standing standing) {
        if (support.shims().isEmpty()) {
            return standing.dolly().isPresent() ? "no shims" : "";
        }
        return support.shims().get().height().map(height -> "shims " + words.length(height)).orElse("height of the shims not known");
    }
}
