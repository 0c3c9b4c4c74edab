package cradlewright.analysis.dolly;

import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.SectionPoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The edges of a section as one looks along the member, y across and z along its height, in m; bends are drawn as sharp corners.
 *
 * @param steel the outer edge
 * @param hollow the inner edge of what is hollow; empty for what is not
 */
public record SectionOutline(List<SectionPoint> steel, List<SectionPoint> hollow) {

    private static final int CORNERS = 48;
    /** Where sheet is folded back so far that its mitre would be longer than this many thicknesses, the corner is cut off. */
    private static final double LONGEST_MITRE = 3;

    /** Copies the lists. */
    public SectionOutline {
        steel = List.copyOf(steel);
        hollow = List.copyOf(hollow);
    }

    /** Returns the edges of a section; nothing when a measure is missing, or the measures make no section. */
    public static Optional<SectionOutline> of(StockFacts.Section section) {
        try {
            return drawn(section);
        } catch (IllegalArgumentException e) {
            // Measures that make no section cannot be drawn; the dolly says which member lacks its section.
            return Optional.empty();
        }
    }

    private static Optional<SectionOutline> drawn(StockFacts.Section section) {
        if (section instanceof StockFacts.Folded s) {
            return SectionKey.sheet(s).map(sheet -> new SectionOutline(sheet(sheet), List.of()));
        }
        if (section instanceof StockFacts.Tube s) {
            return s.diameter().flatMap(d -> s.thickness().map(t -> new SectionOutline(round(d.si() / 2), round(d.si() / 2 - t.si()))));
        }
        if (section instanceof StockFacts.Hollow s) {
            return box(s.width(), s.height()).flatMap(outer -> s.thickness().map(t -> new SectionOutline(outer,
                    box(s.width().orElseThrow().si() - 2 * t.si(), s.height().orElseThrow().si() - 2 * t.si()))));
        }
        if (section instanceof StockFacts.Tee s) {
            return tee(s);
        }
        if (section instanceof StockFacts.Flat s) {
            return box(s.width(), s.height()).map(edge -> new SectionOutline(edge, List.of()));
        }
        StockFacts.TimberRail s = (StockFacts.TimberRail) section;
        return box(s.width(), s.height()).map(edge -> new SectionOutline(edge, List.of()));
    }

    private static Optional<List<SectionPoint>> box(Optional<Value> width, Optional<Value> height) {
        return width.flatMap(w -> height.map(h -> box(w.si(), h.si())));
    }

    private static List<SectionPoint> box(double width, double height) {
        double y = width / 2;
        double z = height / 2;
        return List.of(new SectionPoint(-y, -z), new SectionPoint(y, -z), new SectionPoint(y, z), new SectionPoint(-y, z));
    }

    private static List<SectionPoint> round(double radius) {
        List<SectionPoint> points = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double turn = 2 * Math.PI * i / CORNERS;
            points.add(new SectionPoint(radius * Math.cos(turn), radius * Math.sin(turn)));
        }
        return points;
    }

    private static Optional<SectionOutline> tee(StockFacts.Tee s) {
        if (s.flangeWidth().isEmpty() || s.flangeThickness().isEmpty() || s.webHeight().isEmpty() || s.webThickness().isEmpty()) {
            return Optional.empty();
        }
        double flange = s.flangeWidth().get().si() / 2;
        double web = s.webThickness().get().si() / 2;
        double under = s.webHeight().get().si();
        double top = under + s.flangeThickness().get().si();
        return Optional.of(new SectionOutline(List.of(new SectionPoint(-web, 0), new SectionPoint(web, 0), new SectionPoint(web, under),
                new SectionPoint(flange, under), new SectionPoint(flange, top), new SectionPoint(-flange, top),
                new SectionPoint(-flange, under), new SectionPoint(-web, under)), List.of()));
    }

    private static List<SectionPoint> sheet(FoldedSection sheet) {
        List<SectionPoint> edge = new ArrayList<>(side(sheet.corners(), sheet.thickness() / 2));
        List<SectionPoint> other = new ArrayList<>(side(sheet.corners(), -sheet.thickness() / 2));
        Collections.reverse(other);
        edge.addAll(other);
        return edge;
    }

    /** The midline moved sideways by half the thickness, with mitred corners. */
    private static List<SectionPoint> side(List<SectionPoint> line, double by) {
        List<SectionPoint> side = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            SectionPoint before = way(line, Math.max(0, i - 1));
            SectionPoint after = way(line, Math.min(line.size() - 2, i));
            // The mitre is the mean of both normals, stretched so that it reaches both edges.
            double y = -(before.z() + after.z()) / 2;
            double z = (before.y() + after.y()) / 2;
            double stretch = Math.min(LONGEST_MITRE, 1 / Math.max(1e-9, y * y + z * z));
            side.add(new SectionPoint(line.get(i).y() + by * stretch * y, line.get(i).z() + by * stretch * z));
        }
        return side;
    }

    private static SectionPoint way(List<SectionPoint> line, int from) {
        double y = line.get(from + 1).y() - line.get(from).y();
        double z = line.get(from + 1).z() - line.get(from).z();
        double length = Math.hypot(y, z);
        return new SectionPoint(y / length, z / length);
    }
}
