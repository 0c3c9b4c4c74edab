package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.List;

/**
 * Flat or square solid bar. Warping is left out, which is on the safe side. It lists no plates, so the steel checks treat it
 * as class 3 (elastic).
 *
 * @see SectionFormulas#BAR_TORSION
 */
public final class FlatBar {

    private FlatBar() {
    }

    /**
     * Solid rectangle.
     *
     * @param height along z, m
     * @param width along y, m
     */
    public static SectionProperties of(double height, double width) {
        Require.positive(height, "height of the bar");
        Require.positive(width, "width of the bar");
        double area = height * width;
        double y = width / 2;
        double z = height / 2;
        ShearAreas shear = new ShearAreas(area, area * 2 / 3, area * 5 / 6);
        return new SectionProperties("flat bar",
                new AreaMoments(area, 0, 0, width * Math.pow(height, 3) / 12, height * Math.pow(width, 3) / 12, 0),
                new TorsionProperties(torsionConstant(height, width), torsionModulus(height, width), 0, 0, 0), shear, shear,
                width * height * height / 4, height * width * width / 4,
                List.of(new SectionPoint(-y, -z), new SectionPoint(y, -z), new SectionPoint(y, z), new SectionPoint(-y, z)),
                List.of());
    }

    private static double torsionConstant(double height, double width) {
        double a = Math.max(height, width);
        double b = Math.min(height, width);
        return a * Math.pow(b, 3) * (1.0 / 3 - 0.21 * b / a * (1 - Math.pow(b / a, 4) / 12));
    }

    private static double torsionModulus(double height, double width) {
        double a = Math.max(height, width) / 2;
        double q = Math.min(height, width) / 2 / a;
        double peak = 1 + 0.6095 * q + 0.8865 * q * q - 1.8023 * Math.pow(q, 3) + 0.91 * Math.pow(q, 4);
        return 8 * a * Math.pow(q * a, 2) / (3 * peak);
    }
}
