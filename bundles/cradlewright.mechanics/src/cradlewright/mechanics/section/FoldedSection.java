package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * An open section folded from sheet of one thickness: any polyline of midline corners with equal inner bend radii.
 *
 * <p>Area and second moments are those of the real sheet with its round bends. Shear centre, warping constant and shear flow
 * follow the thin-walled theory of the midline. J is the sum of s t3/3. Holes, slots and cutouts are not taken off, and a
 * midline that crosses itself is not noticed.
 */
public final class FoldedSection {

    private static final double SMALLEST_BEND = 1e-4;
    private static final double LARGEST_BEND = Math.toRadians(170);
    private static final double STEEP = Math.sqrt(0.5) - 1e-12;
    private static final double HOLDING_EDGE = 0.2;
    private static final int ARC_POINTS = 16;
    private static final List<Plate.Kind> TWO_FLANGES = List.of(Plate.Kind.OUTSTAND, Plate.Kind.INTERNAL, Plate.Kind.OUTSTAND);

    private final String name;
    private final List<SectionPoint> corners;
    private final double thickness;
    private final double innerRadius;
    private final boolean round;
    private final List<Plate.Kind> kinds;
    private final Midline midline;

    private FoldedSection(String name, List<SectionPoint> corners, double thickness, double innerRadius, boolean round,
            List<Plate.Kind> kinds) {
        this.name = Objects.requireNonNull(name, "name");
        this.corners = List.copyOf(corners);
        this.thickness = Require.positive(thickness, "sheet thickness");
        this.innerRadius = Require.notNegative(innerRadius, "inner bend radius");
        this.round = round;
        if (corners.size() < 3) {
            throw new IllegalArgumentException(
                    name + " needs three midline corners or more (a flat strip is a FlatBar), found " + corners.size());
        }
        this.kinds = kinds == null ? defaultKinds() : List.copyOf(kinds);
        this.midline = new Midline(pieces(), thickness);
    }

    /**
     * A section from its midline corners, in the order along the sheet. Flat parts at the ends count as outstands, those
     * between two bends as internal; but a part next to an edge fold narrower than 0.2 of it counts as an outstand
     * (EN 1993-1-3 5.2(5), from memory), since such a fold does not hold it.
     *
     * @param name for reports
     * @param midlineCorners where the midlines of adjoining flats meet, m
     * @param thickness m
     * @param innerRadius inner bend radius, 0 allowed, m
     * @throws IllegalArgumentException for fewer than three corners, flats too short for their bends, bends under 0.0001 rad
     *         or over 170 degrees
     */
    public static FoldedSection of(String name, List<SectionPoint> midlineCorners, double thickness, double innerRadius) {
        return new FoldedSection(name, midlineCorners, thickness, innerRadius, true, null);
    }

    /** As {@link #of} with the sharp midline of hand calculations: the corners are neither rounded nor mitred. */
    public static FoldedSection sharp(String name, List<SectionPoint> midlineCorners, double thickness) {
        return new FoldedSection(name, midlineCorners, thickness, 0, false, null);
    }

    /** Channel, web upright on the left, flanges to the right; outside measures, m. */
    public static FoldedSection channel(double height, double width, double thickness, double innerRadius) {
        double h = thickness / 2;
        return new FoldedSection("channel", List.of(new SectionPoint(width, height - h), new SectionPoint(h, height - h),
                new SectionPoint(h, h), new SectionPoint(width, h)), thickness, innerRadius, true, TWO_FLANGES);
    }

    /**
     * Channel with lips turned inwards; outside measures, m. The flanges are classified as outstands as if the lips did not
     * hold them: the edge-stiffener check of EN 1993-1-3 5.5.3 is not made here, so this is the safe side.
     */
    public static FoldedSection lippedChannel(double height, double width, double lip, double thickness, double innerRadius) {
        double h = thickness / 2;
        List<SectionPoint> corners = List.of(new SectionPoint(width - h, height - lip), new SectionPoint(width - h, height - h),
                new SectionPoint(h, height - h), new SectionPoint(h, h), new SectionPoint(width - h, h),
                new SectionPoint(width - h, lip));
        return new FoldedSection("lipped channel", corners, thickness, innerRadius, true, List.of(Plate.Kind.OUTSTAND,
                Plate.Kind.OUTSTAND, Plate.Kind.INTERNAL, Plate.Kind.OUTSTAND, Plate.Kind.OUTSTAND));
    }

    /** Angle, corner at the lower left; outside measures, m. */
    public static FoldedSection angle(double height, double width, double thickness, double innerRadius) {
        double h = thickness / 2;
        return of("angle", List.of(new SectionPoint(h, height), new SectionPoint(h, h), new SectionPoint(width, h)), thickness,
                innerRadius);
    }

    /** Zed, upper flange to the left, lower to the right; outside measures, flange width includes the web, m. */
    public static FoldedSection zed(double height, double flange, double thickness, double innerRadius) {
        double h = thickness / 2;
        return new FoldedSection("zed", List.of(new SectionPoint(h - flange, height - h), new SectionPoint(0, height - h),
                new SectionPoint(0, h), new SectionPoint(flange - h, h)), thickness, innerRadius, true, TWO_FLANGES);
    }

    /** Hat, brims below, top closed; outside measures: height, width over the top, width over the brims, m. */
    public static FoldedSection hat(double height, double topWidth, double brimWidth, double thickness, double innerRadius) {
        double h = thickness / 2;
        double web = topWidth / 2 - h;
        return of("hat", List.of(new SectionPoint(-brimWidth / 2, h), new SectionPoint(-web, h),
                new SectionPoint(-web, height - h), new SectionPoint(web, height - h), new SectionPoint(web, h),
                new SectionPoint(brimWidth / 2, h)), thickness, innerRadius);
    }

    /** The same sheet turned about the origin of the drawing, counter-clockwise, rad. */
    public FoldedSection turned(double angle) {
        Require.finite(angle, "angle");
        return new FoldedSection(name, corners.stream().map(p -> p.turned(angle)).toList(), thickness, innerRadius, round, kinds);
    }

    /** The same sheet mirrored left to right. */
    public FoldedSection mirrored() {
        return new FoldedSection(name, corners.stream().map(p -> new SectionPoint(-p.y(), p.z())).toList(), thickness,
                innerRadius, round, kinds);
    }

    /** The same corners with a sharp midline. */
    public FoldedSection sharpCorners() {
        return new FoldedSection(name, corners, thickness, 0, false, kinds);
    }

    /** Corners of the midline in the order along the sheet, where the midlines of adjoining flats meet, m. */
    public List<SectionPoint> corners() {
        return corners;
    }

    /** Sheet thickness, m. */
    public double thickness() {
        return thickness;
    }

    /** Inner bend radius, m. */
    public double innerRadius() {
        return innerRadius;
    }

    /** Number of bends. */
    public int bends() {
        return corners.size() - 2;
    }

    /** Moments of the bare midline times the thickness: the base of the thin-walled theory, a little less than the real ones. */
    public AreaMoments midlineMoments() {
        return midline.line();
    }

    /**
     * All properties of the section.
     *
     * @see SectionFormulas#FOLDED_MOMENTS
     * @see SectionFormulas#SHEAR_CENTRE
     * @see SectionFormulas#WARPING
     * @see SectionFormulas#WARPING_MODULI
     * @see SectionFormulas#OPEN_TORSION
     * @see SectionFormulas#PLASTIC_MODULUS
     * @see SectionFormulas#SHEAR_AREAS
     */
    public SectionProperties properties() {
        SectionPoint centre = midline.shearCentre();
        double constant = midline.length() * Math.pow(thickness, 3) / 3;
        PlasticModulus plastic = new PlasticModulus(midline, thickness);
        return new SectionProperties(name, midline.thick(),
                new TorsionProperties(constant, constant / thickness, midline.warping(centre), centre.y(), centre.z(),
                        midline.warpingModulus(centre), midline.warpingShear(centre)),
                shearAreas(false), shearAreas(true), plastic.along(SectionPoint::z), plastic.along(SectionPoint::y), outline(),
                plates());
    }

    /**
     * Width of the blank: flats plus the bend allowances of DIN 6935, m.
     *
     * @throws IllegalArgumentException for sharp corners, which cannot be folded, or radii outside of the standard
     * @see SectionFormulas#FLAT_PATTERN
     */
    public double flatWidth() {
        if (!round) {
            throw new IllegalArgumentException(name + " has sharp corners: no flat width without a bend radius");
        }
        double width = 0;
        for (MidlinePiece piece : midline.pieces()) {
            width += piece instanceof MidlinePiece.Arc arc
                    ? FlatPattern.allowance(arc.length() / arc.radius(), innerRadius, thickness)
                    : piece.length();
        }
        return width;
    }

    /** Area and moments by the corner approximation of EN 1993-1-3, for comparison with the exact ones. */
    public RoundedCorners roundedCorners() {
        double flats = 0;
        for (int i = 1; i < corners.size(); i++) {
            flats += corners.get(i - 1).distance(corners.get(i));
        }
        double turns = 0;
        for (int i = 1; i < corners.size() - 1; i++) {
            turns += Math.abs(bend(i));
        }
        return RoundedCorners.of(sharpCorners().properties(), innerRadius, turns, flats);
    }

    private List<Plate.Kind> defaultKinds() {
        int flats = corners.size() - 1;
        List<Plate.Kind> result = new ArrayList<>(Collections.nCopies(flats, Plate.Kind.INTERNAL));
        result.set(0, Plate.Kind.OUTSTAND);
        result.set(flats - 1, Plate.Kind.OUTSTAND);
        if (flats > 2) {
            if (flat(0) < HOLDING_EDGE * flat(1)) {
                result.set(1, Plate.Kind.OUTSTAND);
            }
            if (flat(flats - 1) < HOLDING_EDGE * flat(flats - 2)) {
                result.set(flats - 2, Plate.Kind.OUTSTAND);
            }
        }
        return result;
    }

    private double flat(int i) {
        return corners.get(i).distance(corners.get(i + 1));
    }

    private SectionPoint direction(int i) {
        double length = Require.positive(flat(i), "length of flat " + (i + 1) + " of " + name);
        return new SectionPoint((corners.get(i + 1).y() - corners.get(i).y()) / length,
                (corners.get(i + 1).z() - corners.get(i).z()) / length);
    }

    /** Turn at a corner, to the left above zero, rad. */
    private double bend(int corner) {
        SectionPoint a = direction(corner - 1);
        SectionPoint b = direction(corner);
        double turn = Math.atan2(a.y() * b.z() - a.z() * b.y(), a.y() * b.y() + a.z() * b.z());
        Require.within(Math.abs(turn), SMALLEST_BEND, LARGEST_BEND, "bend angle at corner " + (corner + 1) + " of " + name);
        return turn;
    }

    private List<MidlinePiece> pieces() {
        double radius = round ? innerRadius + thickness / 2 : 0;
        int flats = corners.size() - 1;
        double[] cut = new double[flats + 1];
        for (int i = 1; i < flats; i++) {
            cut[i] = radius * Math.tan(Math.abs(bend(i)) / 2);
        }
        List<MidlinePiece> result = new ArrayList<>();
        for (int i = 0; i < flats; i++) {
            SectionPoint along = direction(i);
            SectionPoint from = corners.get(i);
            double straight = flat(i) - cut[i] - cut[i + 1];
            if (straight < -1e-12) {
                throw new IllegalArgumentException("flat " + (i + 1) + " of " + name + " is " + flat(i)
                        + " m between midline corners, its bends need " + (cut[i] + cut[i + 1]) + " m");
            }
            SectionPoint start = new SectionPoint(from.y() + cut[i] * along.y(), from.z() + cut[i] * along.z());
            MidlinePiece.Line line = new MidlinePiece.Line(start, along, Math.max(straight, 0));
            result.add(line);
            if (i + 1 < flats && round) {
                result.add(arc(line, bend(i + 1), radius));
            }
        }
        return result;
    }

    private static MidlinePiece.Arc arc(MidlinePiece.Line line, double bend, double radius) {
        SectionPoint end = line.at(line.length());
        SectionPoint normal = line.normal(line.length());
        double turn = Math.signum(bend);
        SectionPoint centre = new SectionPoint(end.y() + turn * radius * normal.y(), end.z() + turn * radius * normal.z());
        double start = Math.atan2(end.z() - centre.z(), end.y() - centre.y());
        return new MidlinePiece.Arc(centre, radius, start, turn, radius * Math.abs(bend));
    }

    private ShearAreas shearAreas(boolean alongZ) {
        double elastic = midline.elasticShearArea(alongZ);
        double inner = steepFlats(alongZ, 1, corners.size() - 2);
        double all = inner > 0 ? inner : steepFlats(alongZ, 0, corners.size() - 1);
        return new ShearAreas(all > 0 ? all * thickness : elastic, elastic, midline.deflectionShearArea(alongZ));
    }

    /** Sum of the flats, corner to corner, that run within 45 degrees of the force, projected on it. */
    private double steepFlats(boolean alongZ, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            double share = Math.abs(alongZ ? direction(i).z() : direction(i).y());
            if (share >= STEEP) {
                sum += flat(i) * share;
            }
        }
        return sum;
    }

    private List<Plate> plates() {
        List<MidlinePiece.Line> lines = midline.pieces().stream().filter(MidlinePiece.Line.class::isInstance)
                .map(MidlinePiece.Line.class::cast).toList();
        List<Plate> result = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            MidlinePiece.Line line = lines.get(i);
            if (line.length() > 1e-9) {
                SectionPoint a = line.at(0);
                SectionPoint b = line.at(line.length());
                // the free edge, or the edge at the lip, lies at the start in the first half of the sheet
                boolean tipFirst = i < lines.size() / 2;
                result.add(tipFirst ? Plate.straight(kinds.get(i), b, a, thickness)
                        : Plate.straight(kinds.get(i), a, b, thickness));
            }
        }
        return result;
    }

    private List<SectionPoint> outline() {
        List<SectionPoint> result = new ArrayList<>();
        for (MidlinePiece piece : midline.pieces()) {
            List<Double> stations = new ArrayList<>(Arrays.asList(0.0, piece.length()));
            if (piece instanceof MidlinePiece.Arc arc) {
                for (int k = 1; k < ARC_POINTS; k++) {
                    stations.add(arc.length() * k / ARC_POINTS);
                }
            }
            for (double s : stations) {
                SectionPoint p = piece.at(s);
                SectionPoint n = piece.normal(s);
                for (double side : new double[] {-thickness / 2, thickness / 2}) {
                    result.add(new SectionPoint(p.y() + side * n.y(), p.z() + side * n.z()));
                }
            }
        }
        return result;
    }
}
