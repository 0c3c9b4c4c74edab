package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * Cold formed hollow sections to EN 10219-2: rectangular or square with its corner radii, and circular.
 *
 * @see SectionFormulas#HOLLOW_MOMENTS
 * @see SectionFormulas#HOLLOW_TORSION
 */
public final class HollowSection {

    private static final int CIRCLE_POINTS = 32;
    private static final double FLAT_CUT = 3;

    /** Values of a rectangle with rounded corners about its own centre. */
    private record RoundedRectangle(double height, double width, double radius) {

        double cornerArea() {
            return (1 - Math.PI / 4) * radius * radius;
        }

        /** Distance of the centroid of the missing corner from the edges. */
        double cornerInset() {
            return radius * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
        }

        double cornerOwnMoment() {
            return Math.pow(radius, 4) * (1.0 / 3 - Math.PI / 16 - 1 / (9 * (4 - Math.PI)));
        }

        double area() {
            return height * width - 4 * cornerArea();
        }

        /** Second moment about the axis across the height. */
        double second(double along, double across) {
            double arm = along / 2 - cornerInset();
            return across * Math.pow(along, 3) / 12 - 4 * (cornerOwnMoment() + cornerArea() * arm * arm);
        }

        /** Twice the first moment of one half. */
        double plastic(double along, double across) {
            return across * along * along / 4 - 4 * cornerArea() * (along / 2 - cornerInset());
        }
    }

    private HollowSection() {
    }

    /**
     * Rectangular hollow section with the corner radii that EN 10219-2 (from memory) uses for section values: outside 2.0,
     * 2.5, 3.0 t and inside 1.0, 1.5, 2.0 t for t up to 6, up to 10, above 10 mm.
     *
     * @param height outside, along z, m
     * @param width outside, along y, m
     * @param thickness m
     * @throws IllegalArgumentException when the wall is too thick for a flat part to remain
     */
    public static SectionProperties rectangular(double height, double width, double thickness) {
        Require.positive(thickness, "wall thickness");
        double outer = thickness <= 6.0e-3 ? 2.0 : thickness <= 10.0e-3 ? 2.5 : 3.0;
        return rectangular(height, width, thickness, outer * thickness, (outer - 1) * thickness);
    }

    /**
     * Rectangular hollow section with given corner radii.
     *
     * @param height outside, along z, m
     * @param width outside, along y, m
     * @param thickness m
     * @param outerRadius m
     * @param innerRadius m
     */
    public static SectionProperties rectangular(double height, double width, double thickness, double outerRadius,
            double innerRadius) {
        Require.positive(thickness, "wall thickness");
        Require.notNegative(innerRadius, "inner corner radius");
        Require.within(outerRadius, innerRadius, innerRadius + 2 * thickness, "outer corner radius");
        double least = Math.max(2 * outerRadius, Math.max(2 * (innerRadius + thickness), FLAT_CUT * thickness));
        Require.within(height, Math.nextUp(least), Double.MAX_VALUE, "height of the hollow section");
        Require.within(width, Math.nextUp(least), Double.MAX_VALUE, "width of the hollow section");
        RoundedRectangle out = new RoundedRectangle(height, width, outerRadius);
        RoundedRectangle in = new RoundedRectangle(height - 2 * thickness, width - 2 * thickness, innerRadius);
        double area = out.area() - in.area();
        double iy = out.second(height, width) - in.second(in.height(), in.width());
        double iz = out.second(width, height) - in.second(in.width(), in.height());
        double wy = out.plastic(height, width) - in.plastic(in.height(), in.width());
        double wz = out.plastic(width, height) - in.plastic(in.width(), in.height());

        double meanRadius = (outerRadius + innerRadius) / 2;
        double perimeter = 2 * (height - thickness + width - thickness) - 2 * meanRadius * (4 - Math.PI);
        double enclosed = (height - thickness) * (width - thickness) - meanRadius * meanRadius * (4 - Math.PI);
        double k = 2 * enclosed * thickness / perimeter;
        double constant = perimeter * Math.pow(thickness, 3) / 3 + 2 * k * enclosed;

        double zFlat = (height - FLAT_CUT * thickness) / 2;
        double yFlat = (width - FLAT_CUT * thickness) / 2;
        double zWall = (height - thickness) / 2;
        double yWall = (width - thickness) / 2;
        List<Plate> plates = List.of(
                wall(-yWall, -zFlat, -yWall, zFlat, thickness), wall(yWall, -zFlat, yWall, zFlat, thickness),
                wall(-yFlat, -zWall, yFlat, -zWall, thickness), wall(-yFlat, zWall, yFlat, zWall, thickness));
        return new SectionProperties("rectangular hollow section", new AreaMoments(area, 0, 0, iy, iz, 0),
                new TorsionProperties(constant, constant / (thickness + k / thickness), 0, 0, 0),
                new ShearAreas(area * width / (height + width), 4 * thickness * iz / wz,
                        boxDeflectionArea(width - thickness, height - thickness, thickness)),
                new ShearAreas(area * height / (height + width), 4 * thickness * iy / wy,
                        boxDeflectionArea(height - thickness, width - thickness, thickness)),
                wy, wz, box(width / 2, height / 2), plates);
    }

    private static Plate wall(double y1, double z1, double y2, double z2, double thickness) {
        return Plate.straight(Plate.Kind.INTERNAL, new SectionPoint(y1, z1), new SectionPoint(y2, z2), thickness);
    }

    private static List<SectionPoint> box(double y, double z) {
        return List.of(new SectionPoint(-y, -z), new SectionPoint(y, -z), new SectionPoint(y, z), new SectionPoint(-y, z));
    }

    /** Shear area of equal strain energy of the sharp box midline: I2 t over the integral of (S/t)2 along the wall. */
    private static double boxDeflectionArea(double along, double across, double thickness) {
        double second = along * along * along / 6 + across * along * along / 2;
        double c = across * along / 4 + along * along / 8;
        double half = along / 2;
        double webs = 4 * (c * c * half - c * Math.pow(half, 3) / 3 + Math.pow(half, 5) / 20);
        double flanges = along * along * Math.pow(across, 3) / 24;
        return thickness * second * second / (webs + flanges);
    }

    /**
     * Circular hollow section.
     *
     * @param diameter outside, m
     * @param thickness below half the diameter, m
     */
    public static SectionProperties circular(double diameter, double thickness) {
        Require.positive(thickness, "wall thickness");
        Require.within(diameter, Math.nextUp(2 * thickness), Double.MAX_VALUE, "diameter of the tube");
        double bore = diameter - 2 * thickness;
        double area = Math.PI / 4 * (diameter * diameter - bore * bore);
        double second = Math.PI / 64 * (Math.pow(diameter, 4) - Math.pow(bore, 4));
        double plastic = (Math.pow(diameter, 3) - Math.pow(bore, 3)) / 6;
        ShearAreas shear = new ShearAreas(2 * area / Math.PI, 4 * thickness * second / plastic, area / 2);
        List<SectionPoint> outline = new ArrayList<>();
        for (int i = 0; i < CIRCLE_POINTS; i++) {
            double angle = 2 * Math.PI * i / CIRCLE_POINTS;
            outline.add(new SectionPoint(diameter / 2 * Math.cos(angle), diameter / 2 * Math.sin(angle)));
        }
        SectionPoint centre = new SectionPoint(0, 0);
        return new SectionProperties("circular hollow section", new AreaMoments(area, 0, 0, second, second, 0),
                new TorsionProperties(2 * second, 4 * second / diameter, 0, 0, 0), shear, shear, plastic, plastic, outline,
                List.of(new Plate(Plate.Kind.TUBE, centre, centre, diameter, thickness)));
    }
}
