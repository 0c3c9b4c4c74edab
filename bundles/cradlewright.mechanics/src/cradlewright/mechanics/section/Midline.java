package cradlewright.mechanics.section;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.LegendreRuleFactory;
import org.hipparchus.util.Pair;

/**
 * The open midline of a folded sheet of one thickness, and all integrals along it: moments, shear flow, sectorial
 * coordinates. Arcs are integrated as arcs.
 */
final class Midline {

    private static final int FLOW_STEPS = 512;
    /** Points in each piece at which the flow of the warping is looked at; it is found by a sum over them. */
    private static final int WARPING_STEPS = 512;
    /** Share of the squared length of the midline below which a sectorial coordinate is rounding: strips that meet in one point. */
    private static final double NO_WARPING = 1e-9;
    private static final GaussIntegrator GAUSS = gauss(24);

    private final List<MidlinePiece> pieces;
    private final double thickness;
    private final AreaMoments line;
    private final double[] firstYBefore;
    private final double[] firstZBefore;
    private final double[] sectorBefore;

    /** A function along the midline: number of the piece and length within it. */
    private interface Along {
        double at(int piece, double s);
    }

    Midline(List<MidlinePiece> pieces, double thickness) {
        this.pieces = List.copyOf(pieces);
        this.thickness = thickness;
        int n = pieces.size();
        firstYBefore = new double[n];
        firstZBefore = new double[n];
        sectorBefore = new double[n];
        for (int i = 1; i < n; i++) {
            MidlinePiece before = pieces.get(i - 1);
            firstYBefore[i] = firstYBefore[i - 1] + before.firstY(before.length());
            firstZBefore[i] = firstZBefore[i - 1] + before.firstZ(before.length());
            sectorBefore[i] = sectorBefore[i - 1] + before.sector(before.length());
        }
        line = lineMoments();
    }

    List<MidlinePiece> pieces() {
        return pieces;
    }

    double length() {
        return pieces.stream().mapToDouble(MidlinePiece::length).sum();
    }

    /** Moments of the bare line times the thickness, without the stiffness of the sheet about its own midline. */
    AreaMoments line() {
        return line;
    }

    /** Moments of the real sheet: the area element at the distance e from the midline is (1 - curvature e) ds de. */
    AreaMoments thick() {
        double area = line.area();
        double own = Math.pow(thickness, 3) / 12;
        double cy = line.centroidY() - own * integrate((i, s) -> piece(i).curvature() * piece(i).normal(s).y()) / area;
        double cz = line.centroidZ() - own * integrate((i, s) -> piece(i).curvature() * piece(i).normal(s).z()) / area;
        SectionPoint centroid = new SectionPoint(cy, cz);
        return new AreaMoments(area, cy, cz,
                integrate((i, s) -> second(i, s, centroid, 0, 1, 0, 1)),
                integrate((i, s) -> second(i, s, centroid, 1, 0, 1, 0)),
                integrate((i, s) -> second(i, s, centroid, 1, 0, 0, 1)));
    }

    /** Second-moment density a b across the sheet, a = ay y + az z and b likewise, measured from the centroid. */
    private double second(int i, double s, SectionPoint centroid, double ay, double az, double by, double bz) {
        SectionPoint p = piece(i).at(s);
        SectionPoint n = piece(i).normal(s);
        double y = p.y() - centroid.y();
        double z = p.z() - centroid.z();
        double a = ay * y + az * z;
        double b = by * y + bz * z;
        double na = ay * n.y() + az * n.z();
        double nb = by * n.y() + bz * n.z();
        double own = Math.pow(thickness, 3) / 12;
        return a * b * thickness + own * (na * nb - piece(i).curvature() * (a * nb + b * na));
    }

    /** The point about which the sectorial coordinate carries no moment: integral w y dA = integral w z dA = 0. */
    SectionPoint shearCentre() {
        SectionPoint centroid = new SectionPoint(line.centroidY(), line.centroidZ());
        double wy = thickness * integrate((i, s) -> sector(i, s, centroid) * (piece(i).at(s).y() - line.centroidY()));
        double wz = thickness * integrate((i, s) -> sector(i, s, centroid) * (piece(i).at(s).z() - line.centroidZ()));
        double determinant = line.iy() * line.iz() - line.iyz() * line.iyz();
        return new SectionPoint(line.centroidY() + (line.iz() * wz - line.iyz() * wy) / determinant,
                line.centroidZ() + (line.iyz() * wz - line.iy() * wy) / determinant);
    }

    /** Warping constant: integral of the squared sectorial coordinate about the shear centre, less its mean. */
    double warping(SectionPoint shearCentre) {
        double mean = meanSector(shearCentre);
        return thickness * integrate((i, s) -> square(sector(i, s, shearCentre) - mean));
    }

    /**
     * Bimoment over this is the largest normal stress: I_w over the largest sectorial coordinate; 0 for strips that meet in one point.
     * That coordinate is linear along a flat and has no peak between the ends of an arc that matters beside them, so ends are looked at,
     * and the middle of arcs.
     */
    double warpingModulus(SectionPoint shearCentre) {
        double mean = meanSector(shearCentre);
        double largest = 0;
        for (int i = 0; i < pieces.size(); i++) {
            for (int k = 0; k <= 2; k++) {
                largest = Math.max(largest, Math.abs(sector(i, piece(i).length() * k / 2, shearCentre) - mean));
            }
        }
        return largest <= NO_WARPING * square(length()) ? 0 : warping(shearCentre) / largest;
    }

    /** Torque carried by warping over this is its largest shear stress: I_w over the largest integral of the sectorial coordinate. */
    double warpingShear(SectionPoint shearCentre) {
        if (warpingModulus(shearCentre) == 0) {
            return 0;
        }
        double mean = meanSector(shearCentre);
        double run = 0;
        double largest = 0;
        for (int i = 0; i < pieces.size(); i++) {
            double step = piece(i).length() / WARPING_STEPS;
            for (int k = 0; k < WARPING_STEPS; k++) {
                double first = sector(i, k * step, shearCentre);
                double middle = sector(i, (k + 0.5) * step, shearCentre);
                double last = sector(i, (k + 1) * step, shearCentre);
                run += step * ((first + 4 * middle + last) / 6 - mean);
                largest = Math.max(largest, Math.abs(run));
            }
        }
        return warping(shearCentre) / largest;
    }

    private double meanSector(SectionPoint pole) {
        return integrate((i, s) -> sector(i, s, pole)) / length();
    }

    /** Shear flow of a unit force through the shear centre along z, or along y, 1/m. */
    private double flow(int i, double s, boolean alongZ) {
        double run = s;
        for (int k = 0; k < i; k++) {
            run += piece(k).length();
        }
        double firstY = thickness * (firstYBefore[i] + piece(i).firstY(s) - run * line.centroidY());
        double firstZ = thickness * (firstZBefore[i] + piece(i).firstZ(s) - run * line.centroidZ());
        double determinant = line.iy() * line.iz() - line.iyz() * line.iyz();
        return alongZ ? (line.iz() * firstZ - line.iyz() * firstY) / determinant
                : (line.iy() * firstY - line.iyz() * firstZ) / determinant;
    }

    /** Force over this area is the largest shear stress; the flow is sampled at many points of each piece. */
    double elasticShearArea(boolean alongZ) {
        double largest = 0;
        for (int i = 0; i < pieces.size(); i++) {
            for (int k = 0; k <= FLOW_STEPS; k++) {
                largest = Math.max(largest, Math.abs(flow(i, piece(i).length() * k / FLOW_STEPS, alongZ)));
            }
        }
        return thickness / largest;
    }

    /** Shear area of equal strain energy: 1 over the integral of flow squared over thickness. */
    double deflectionShearArea(boolean alongZ) {
        return thickness / integrate((i, s) -> square(flow(i, s, alongZ)));
    }

    private double sector(int i, double s, SectionPoint pole) {
        SectionPoint origin = piece(0).at(0);
        SectionPoint here = piece(i).at(s);
        return sectorBefore[i] + piece(i).sector(s) - pole.y() * (here.z() - origin.z()) + pole.z() * (here.y() - origin.y());
    }

    private AreaMoments lineMoments() {
        double length = length();
        double cy = integrate((i, s) -> piece(i).at(s).y()) / length;
        double cz = integrate((i, s) -> piece(i).at(s).z()) / length;
        return new AreaMoments(length * thickness, cy, cz,
                thickness * integrate((i, s) -> square(piece(i).at(s).z() - cz)),
                thickness * integrate((i, s) -> square(piece(i).at(s).y() - cy)),
                thickness * integrate((i, s) -> (piece(i).at(s).y() - cy) * (piece(i).at(s).z() - cz)));
    }

    private double integrate(Along function) {
        double sum = 0;
        for (int i = 0; i < pieces.size(); i++) {
            double length = piece(i).length();
            for (int k = 0; k < GAUSS.getNumberOfPoints(); k++) {
                sum += GAUSS.getWeight(k) * length * function.at(i, GAUSS.getPoint(k) * length);
            }
        }
        return sum;
    }

    private MidlinePiece piece(int i) {
        return pieces.get(i);
    }

    private static double square(double x) {
        return x * x;
    }

    /** The rule from 0 to 1. Straight from its own class: the usual factory first works out tables of 40 digits. */
    private static GaussIntegrator gauss(int points) {
        Pair<double[], double[]> rule = new LegendreRuleFactory().getRule(points);
        double[] at = rule.getFirst().clone();
        double[] weight = rule.getSecond().clone();
        for (int i = 0; i < points; i++) {
            at[i] = (1 + at[i]) / 2;
            weight[i] /= 2;
        }
        return new GaussIntegrator(at, weight);
    }
}
