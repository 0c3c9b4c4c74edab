package cradlewright.report.dolly;

import cradlewright.analysis.dolly.SectionOutline;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Kind;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape;
import cradlewright.report.scene.TextSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sections that members are made of, in a row under the view from the left, so many times as large as the dolly. */
final class Sections {

    private static final double MM = 1000;
    /** Height of the tallest section in heights of the font, about. */
    private static final double TALL = 4;
    private static final double GAP = 1.5;
    private static final double TEXT = 0.8;
    private static final double LINE = 1.15;

    private final DollySight sight;
    private final double text;
    private final Map<StockFacts.Section, Long> used = new LinkedHashMap<>();

    Sections(DollySight sight, double text) {
        this.sight = sight;
        this.text = text;
        for (MemberFacts member : sight.dolly().members()) {
            sight.stock(StockFacts.Section.class, member.sectionId()).ifPresent(section -> used.merge(section, 1L, Long::sum));
        }
    }

    /** Returns the pictures, the first one at that place. */
    List<Item> draw(double left, double top) {
        List<Item> items = new ArrayList<>();
        int times = times();
        double x = left;
        for (Map.Entry<StockFacts.Section, Long> each : used.entrySet()) {
            Optional<SectionOutline> outline = SectionOutline.of(each.getKey());
            if (outline.isPresent()) {
                Item item = picture(each.getKey(), outline.get(), lines(each.getKey(), each.getValue(), times), times, x, top);
                items.add(item);
                x = item.box().right() + GAP * text;
            }
        }
        return items;
    }

    private static List<String> lines(StockFacts.Section section, long members, int times) {
        return List.of(section.name(), members + (members == 1 ? " member" : " members") + ", drawn x" + times);
    }

    private int times() {
        double tallest = used.keySet().stream().flatMap(section -> SectionOutline.of(section).stream()).map(Sections::box)
                .mapToDouble(box -> Math.max(box.height(), box.width())).max().orElse(0);
        return tallest == 0 ? 1 : (int) Math.max(1, Math.round(TALL * text / tallest));
    }

    private static Box box(SectionOutline outline) {
        return outline.steel().stream().map(point -> Box.of(new Shape.Point(MM * point.y(), -MM * point.z())))
                .reduce(Box.EMPTY, Box::union);
    }

    private Item picture(StockFacts.Section section, SectionOutline outline, List<String> lines, int times, double left, double top) {
        Box box = box(outline);
        double x = left - times * box.left();
        double y = top - times * box.top();
        List<Shape> shapes = new ArrayList<>();
        shapes.add(polygon(Role.STRUCTURE, outline.steel(), x, y, times));
        if (!outline.hollow().isEmpty()) {
            shapes.add(polygon(Role.MARK, outline.hollow(), x, y, times));
            shapes.add(polygon(Role.OUTLINE, outline.hollow(), x, y, times));
        }
        shapes.add(polygon(Role.OUTLINE, outline.steel(), x, y, times));
        double line = top + times * box.height() + (TextSize.ASCENT + 0.3) * TEXT * text;
        for (String words : lines) {
            shapes.add(new Shape.Label(Role.TEXT, left, line, TEXT * text, Shape.Anchor.START, words));
            line += LINE * TEXT * text;
        }
        return new Item(section.id(), Kind.SECTION, Optional.of(Projection.SIDE), "section " + section.name(), lines.get(1), shapes);
    }

    private static Shape.Polygon polygon(Role role, List<SectionPoint> points, double x, double y, int times) {
        return new Shape.Polygon(role, points.stream().map(p -> new Shape.Point(x + times * MM * p.y(), y - times * MM * p.z())).toList());
    }
}
