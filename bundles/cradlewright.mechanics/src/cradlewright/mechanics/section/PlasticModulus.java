package cradlewright.mechanics.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Plastic modulus of a sheet of real thickness, as a heap of convex quadrilaterals cut at the equal-area axis. */
final class PlasticModulus {

    private static final int ARC_PARTS = 24;
    private static final int HALVINGS = 60;

    private final List<List<SectionPoint>> cells = new ArrayList<>();

    PlasticModulus(Midline midline, double thickness) {
        for (MidlinePiece piece : midline.pieces()) {
            if (piece instanceof MidlinePiece.Arc arc) {
                addArc(arc, thickness);
            } else {
                cells.add(List.of(offset(piece, 0, thickness / 2), offset(piece, piece.length(), thickness / 2),
                        offset(piece, piece.length(), -thickness / 2), offset(piece, 0, -thickness / 2)));
            }
        }
    }

    private static SectionPoint offset(MidlinePiece piece, double s, double distance) {
        SectionPoint p = piece.at(s);
        SectionPoint n = piece.normal(s);
        return new SectionPoint(p.y() + distance * n.y(), p.z() + distance * n.z());
    }

    private void addArc(MidlinePiece.Arc arc, double thickness) {
        double step = arc.length() / ARC_PARTS;
        double angle = step / arc.radius();
        // the chords are moved outwards so that each cell keeps the area of its ring sector
        double swell = Math.sqrt(angle / Math.sin(angle));
        double inner = (arc.radius() - thickness / 2) * swell;
        double outer = (arc.radius() + thickness / 2) * swell;
        for (int i = 0; i < ARC_PARTS; i++) {
            cells.add(List.of(arc.ring(i * step, inner), arc.ring((i + 1) * step, inner), arc.ring((i + 1) * step, outer),
                    arc.ring(i * step, outer)));
        }
    }

    /** Integral of |u - equal-area level| over the section, u being y or z, m3. */
    double along(ToDoubleFunction<SectionPoint> u) {
        List<Extent> extents = cells.stream().map(cell -> Extent.of(cell, u)).toList();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double total = 0;
        for (Extent extent : extents) {
            total += extent.all()[0];
            low = Math.min(low, extent.low());
            high = Math.max(high, extent.high());
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            double upper = 0;
            for (Extent extent : extents) {
                upper += extent.above(u, middle)[0];
            }
            if (upper > total / 2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double level = (low + high) / 2;
        double modulus = 0;
        for (Extent extent : extents) {
            double[] all = extent.all();
            double[] part = extent.above(u, level);
            double upper = part[1] - part[0] * level;
            double lower = all[1] - part[1] - (all[0] - part[0]) * level;
            modulus += upper - lower;
        }
        return modulus;
    }

    /** A cell with its lowest and highest u, and the area and first moment of the whole of it: most cells are not cut by a level. */
    private record Extent(List<SectionPoint> cell, double low, double high, double[] all) {

        private static final double[] NOTHING = {0, 0};

        static Extent of(List<SectionPoint> cell, ToDoubleFunction<SectionPoint> u) {
            double[] levels = cell.stream().mapToDouble(u).sorted().toArray();
            return new Extent(cell, levels[0], levels[levels.length - 1], PlasticModulus.above(cell, u, Double.NEGATIVE_INFINITY));
        }

        double[] above(ToDoubleFunction<SectionPoint> u, double level) {
            if (low >= level) {
                return all;
            }
            return high < level ? NOTHING : PlasticModulus.above(cell, u, level);
        }
    }

    /** Area and first moment about u = 0 of the part of a convex cell that lies above the level. */
    private static double[] above(List<SectionPoint> cell, ToDoubleFunction<SectionPoint> u, double level) {
        List<SectionPoint> kept = new ArrayList<>();
        for (int i = 0; i < cell.size(); i++) {
            SectionPoint a = cell.get(i);
            SectionPoint b = cell.get((i + 1) % cell.size());
            double ua = u.applyAsDouble(a);
            double ub = u.applyAsDouble(b);
            if (ua >= level) {
                kept.add(a);
            }
            if (ua >= level != ub >= level) {
                double share = (level - ua) / (ub - ua);
                kept.add(new SectionPoint(a.y() + share * (b.y() - a.y()), a.z() + share * (b.z() - a.z())));
            }
        }
        double area = 0;
        double first = 0;
        for (int i = 0; i < kept.size(); i++) {
            SectionPoint a = kept.get(i);
            SectionPoint b = kept.get((i + 1) % kept.size());
            double cross = (a.y() * b.z() - b.y() * a.z()) / 2;
            area += cross;
            first += cross * (u.applyAsDouble(a) + u.applyAsDouble(b)) / 3;
        }
        return area < 0 ? new double[] {-area, -first} : new double[] {area, first};
    }
}
