package cradlewright.report.dolly;

import cradlewright.analysis.checks.use.DollyUsesKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.DollyShape;
import cradlewright.analysis.load.DollyShapeKey;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.Situation;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What there is to see of a dolly with what its parts carry and how far they are used; nothing when there is no such dolly.
 *
 * @param sketch what is shown
 */
public record DollySightKey(DollySketchKey sketch) implements Key<Optional<DollySight>> {

    @Override
    public Optional<DollySight> compute(Reader reader) {
        return reader.read(sketch).map(sight -> new DollySight(sight.dolly(), sight.stock(), sight.stand().map(stand -> worked(stand,
                reader))));
    }

    private static DollyStand worked(DollyStand stand, Reader reader) {
        String car = stand.standing().car().id();
        String visit = stand.standing().visit().id();
        List<Situation> shown = stand.chosen().map(List::of).orElse(stand.situations());
        List<Loads> loads = shown.stream().map(situation -> reader.read(new LoadsKey(car, visit, situation, false))).toList();
        Optional<DollyShape> shape = shown.stream().flatMap(situation -> reader.read(new DollyShapeKey(car, visit, situation)).stream())
                .max(Comparator.comparingDouble(DollyShape::largest));
        return new DollyStand(stand.standing(), stand.situations(), stand.chosen(), loads, shape,
                reader.read(new DollyUsesKey(car, visit, stand.chosen())), false);
    }
}
