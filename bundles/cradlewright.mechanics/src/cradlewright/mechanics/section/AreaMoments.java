package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;

/**
 * Area, centroid and second moments about the centroid, in the axes of the drawing.
 *
 * @param area m2
 * @param centroidY m
 * @param centroidZ m
 * @param iy integral of z2 about the centroid, m4
 * @param iz integral of y2 about the centroid, m4
 * @param iyz integral of y z about the centroid, m4
 */
public record AreaMoments(double area, double centroidY, double centroidZ, double iy, double iz, double iyz) {

    private static final double SYMMETRY = 1e-9;

    /** Refuses areas and second moments that no real section has. */
    public AreaMoments {
        Require.positive(area, "section area");
        Require.finite(centroidY, "centroid y");
        Require.finite(centroidZ, "centroid z");
        Require.positive(iy, "Iy");
        Require.positive(iz, "Iz");
        Require.finite(iyz, "Iyz");
        Require.positive(iy * iz - iyz * iyz, "Iy Iz - Iyz2");
    }

    /** True when y and z are principal axes (Iyz negligible). */
    public boolean principalAxes() {
        return Math.abs(iyz) <= SYMMETRY * Math.max(iy, iz);
    }

    /** The larger principal second moment, m4. */
    public double iMax() {
        return (iy + iz) / 2 + Math.hypot((iy - iz) / 2, iyz);
    }

    /** The smaller principal second moment, m4. */
    public double iMin() {
        return (iy * iz - iyz * iyz) / iMax();
    }

    /**
     * Angle from the y axis to the principal axis of the larger second moment, counter-clockwise, rad, from -pi/2 to pi/2;
     * 0 for sections that have no preferred axis.
     */
    public double principalAngle() {
        return 0.5 * Math.atan2(-2 * iyz, iy - iz);
    }

    /**
     * Normal stress at a point, tension positive: N/A plus unsymmetric bending. My above zero pulls the upper side, Mz above
     * zero presses the right side (right-handed about x towards the viewer).
     *
     * @param point in the drawing
     * @param n axial force, tension positive, N
     * @param my moment about y, N*m
     * @param mz moment about z, N*m
     * @return Pa
     * @see SectionFormulas#NORMAL_STRESS
     */
    public double stress(SectionPoint point, double n, double my, double mz) {
        double determinant = iy * iz - iyz * iyz;
        double perZ = (my * iz + mz * iyz) / determinant;
        double perY = -(mz * iy + my * iyz) / determinant;
        return n / area + perZ * (point.z() - centroidZ) + perY * (point.y() - centroidY);
    }
}
