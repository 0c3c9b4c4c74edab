package cradlewright.report.car;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.report.Words;
import cradlewright.report.dolly.Floor;
import cradlewright.report.scene.Pen;

/** The floor under a dolly, seen from the left; of other carriers the files do not say how high they stand. */
final class FloorLine implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        if (sight.standing().carrier() == CarrierKind.DOLLY) {
            Floor.line(pen);
        }
    }
}
