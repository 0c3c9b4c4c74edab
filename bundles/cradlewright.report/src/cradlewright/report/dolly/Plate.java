package cradlewright.report.dolly;

import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A dolly of which no members are known: its outline, and what its plate says. */
final class Plate implements Drawn {

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        Box outline = sight.dolly().nodes().stream().map(NodeFacts::at).flatMap(Optional::stream).map(pen::at).map(Box::of)
                .reduce(Box.EMPTY, Box::union);
        if (sight.dolly().members().isEmpty() && !outline.isEmpty()) {
            draw(outline, sight, pen, words);
        }
    }

    private static void draw(Box outline, DollySight sight, Pen pen, Words words) {
        String plate = plate(sight.dolly(), words);
        Optional<Use> use = sight.worked().map(stand -> stand.use(sight.dolly().id()));
        Pen.ItemPen item = pen.item(sight.dolly().id(), Kind.CARRIER, sight.dolly().name(), Words.join(plate,
                use.map(u -> u.sentence(words.units())).orElse(""), "no members are known"));
        item.draw(Shape.Polygon.of(Role.OUTLINE, outline));
        if (pen.projection() == Projection.PLAN) {
            List<String> lines = new ArrayList<>();
            use.ifPresent(u -> lines.add(u.words()));
            lines.add("no members are known");
            Shape.Point middle = new Shape.Point((outline.left() + outline.right()) / 2, (outline.top() + outline.bottom()) / 2);
            item.text(middle, 0, 1, Side.ABOVE, plate, lines);
        }
    }

    private static String plate(DollyFacts dolly, Words words) {
        return dolly.ratedLoad().map(Value::si).map(mass -> "plate: " + words.mass(mass)).orElse("what its plate says is not known");
    }
}
