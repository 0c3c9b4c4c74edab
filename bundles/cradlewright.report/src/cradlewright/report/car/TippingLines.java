package cradlewright.report.car;

import cradlewright.analysis.checks.TippingLine;
import cradlewright.analysis.load.TipAnswer.Question;
import cradlewright.report.Words;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;

/** The lines over which it would tip, seen from above. */
final class TippingLines implements Drawn {

    @Override
    public void draw(VisitSight sight, Pen pen, Words words) {
        if (pen.projection() != Projection.PLAN) {
            return;
        }
        for (Question question : Question.values()) {
            boolean floor = question == Question.ON_FLOOR;
            Pen.ItemPen item = pen.item(floor ? "tips on the floor" : "tips off its supports", Kind.TIPPING_LINE,
                    floor ? "tipping edges of the dolly on the floor" : "tipping edges on the supports",
                    floor ? "castors turned inward as far as they swivel" : "through the outermost supports");
            for (TippingLine line : sight.tipping()) {
                if (line.question() == question) {
                    item.line(Role.TIP_EDGE, pen.at(line.from()), pen.at(line.to()));
                }
            }
        }
    }
}
