package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.List;
import java.util.Objects;

/**
 * All that frame solver and steel checks need to know of a cross-section. Axes: see the package comment.
 *
 * <p>The elastic moduli are those of the real stress: moment over the largest normal stress at the outline, also when y and
 * z are not principal axes, as in angles and zeds. For such sections the plastic moduli equal the elastic ones, since bending
 * about a drawn axis then has no simple plastic limit; this is on the safe side.
 *
 * @param name readable, for reports
 * @param moments area, centroid, second moments
 * @param torsion torsion constant and modulus, warping, shear centre
 * @param shearY shear areas for a force along y
 * @param shearZ shear areas for a force along z
 * @param plasticY plastic modulus about y, m3
 * @param plasticZ plastic modulus about z, m3
 * @param outline points that contain the most distant fibres
 * @param plates flat parts for local buckling; empty for solid bars
 */
public record SectionProperties(String name, AreaMoments moments, TorsionProperties torsion, ShearAreas shearY,
        ShearAreas shearZ, double plasticY, double plasticZ, List<SectionPoint> outline, List<Plate> plates) {

    /** Copies the lists; refuses missing parts and plastic moduli that are not above zero. */
    public SectionProperties {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(moments, "moments");
        Objects.requireNonNull(torsion, "torsion");
        Objects.requireNonNull(shearY, "shearY");
        Objects.requireNonNull(shearZ, "shearZ");
        Require.positive(plasticY, "plastic modulus about y");
        Require.positive(plasticZ, "plastic modulus about z");
        outline = List.copyOf(outline);
        plates = List.copyOf(plates);
        if (outline.size() < 3) {
            throw new IllegalArgumentException("outline of " + name + " needs three points or more, found " + outline.size());
        }
        if (!moments.principalAxes()) {
            plasticY = elasticModulus(moments, outline, 1, 0);
            plasticZ = elasticModulus(moments, outline, 0, 1);
        }
    }

    /** Area, m2. */
    public double area() {
        return moments.area();
    }

    /** Second moment about the horizontal axis y-y, m4. */
    public double iy() {
        return moments.iy();
    }

    /** Second moment about the vertical axis z-z, m4. */
    public double iz() {
        return moments.iz();
    }

    /** Elastic modulus about y: moment over largest stress, m3. */
    public double elasticY() {
        return elasticModulus(moments, outline, 1, 0);
    }

    /** Elastic modulus about z: moment over largest stress, m3. */
    public double elasticZ() {
        return elasticModulus(moments, outline, 0, 1);
    }

    /**
     * Elastic modulus for a moment along any direction: 1 over the largest stress that the unit moment causes at the outline.
     *
     * @param moments of the gross or of the effective section
     * @param outline points to look at
     * @param my share of the moment about y
     * @param mz share of the moment about z
     * @return m3
     */
    public static double elasticModulus(AreaMoments moments, List<SectionPoint> outline, double my, double mz) {
        double largest = 0;
        for (SectionPoint point : outline) {
            largest = Math.max(largest, Math.abs(moments.stress(point, 0, my, mz)));
        }
        return 1 / Require.positive(largest, "largest bending stress of a unit moment");
    }

    /** Extent above the centroid, m. */
    public double top() {
        return outline.stream().mapToDouble(SectionPoint::z).max().orElseThrow() - moments.centroidZ();
    }

    /** Extent below the centroid, m. */
    public double bottom() {
        return moments.centroidZ() - outline.stream().mapToDouble(SectionPoint::z).min().orElseThrow();
    }

    /** Extent to the right of the centroid, m. */
    public double right() {
        return outline.stream().mapToDouble(SectionPoint::y).max().orElseThrow() - moments.centroidY();
    }

    /** Extent to the left of the centroid, m. */
    public double left() {
        return moments.centroidY() - outline.stream().mapToDouble(SectionPoint::y).min().orElseThrow();
    }
}
