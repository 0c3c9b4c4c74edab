package cradlewright.report.car;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.Words;
import cradlewright.report.dolly.PropPicture;
import cradlewright.report.scene.Pen;
import java.util.Optional;

/** End props with what they carry at rest. */
final class Props implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        sight.standing().dolly().ifPresent(dolly -> {
            for (PropFacts prop : dolly.props()) {
                prop.at().ifPresent(at -> draw(prop, at, dolly, sight, pen, words));
            }
        });
    }

    private static void draw(PropFacts prop, Vec3 at, DollyFacts dolly, VisitSight sight, Pen pen, Words words) {
        Optional<Carried> carried = sight.loads().props().stream().filter(c -> c.id().equals(prop.id())).findFirst();
        PropPicture.draw(prop, at, dolly, carried.map(c -> words.force(c.force())).orElse("load not known"), pen);
    }
}
