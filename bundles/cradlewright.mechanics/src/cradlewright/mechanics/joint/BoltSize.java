package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * Metric coarse-thread hexagon bolts M6 to M16, lengths in m, areas in m2.
 *
 * <p>Sources: nominal stress areas ISO 898-1; widths across flats and washer-face diameters ISO 4014 and ISO 4017, product
 * grade A, medium clearance holes ISO 273, structural hole clearance EN 1090-2 Table 11 (all but the areas from memory).
 */
public enum BoltSize {
    /** M6 x 1. */
    M6(6, 1.0, 20.1, 10, 11.05, 8.9, 6.6, 1),
    /** M8 x 1.25. */
    M8(8, 1.25, 36.6, 13, 14.38, 11.6, 9.0, 1),
    /** M10 x 1.5. */
    M10(10, 1.5, 58.0, 16, 17.77, 14.6, 11.0, 1),
    /** M12 x 1.75. */
    M12(12, 1.75, 84.3, 18, 20.03, 16.6, 13.5, 1),
    /** M14 x 2. */
    M14(14, 2.0, 115, 21, 23.36, 19.6, 15.5, 1),
    /** M16 x 2. */
    M16(16, 2.0, 157, 24, 26.75, 22.5, 17.5, 2);

    private static final double MM = 1e-3;
    private static final double MM2 = 1e-6;

    private final double diameter;
    private final double pitch;
    private final double stressArea;
    private final double acrossFlats;
    private final double acrossCorners;
    private final double washerFace;
    private final double clearanceHole;
    private final double structuralClearance;

    BoltSize(double diameter, double pitch, double stressArea, double acrossFlats, double acrossCorners, double washerFace,
            double clearanceHole, double structuralClearance) {
        this.diameter = diameter * MM;
        this.pitch = pitch * MM;
        this.stressArea = stressArea * MM2;
        this.acrossFlats = acrossFlats * MM;
        this.acrossCorners = acrossCorners * MM;
        this.washerFace = washerFace * MM;
        this.clearanceHole = clearanceHole * MM;
        this.structuralClearance = structuralClearance * MM;
    }

    /** Returns the nominal diameter d, m. */
    public double diameter() {
        return diameter;
    }

    /** Returns the thread pitch p, m. */
    public double pitch() {
        return pitch;
    }

    /** Returns the tabulated nominal stress area A_s, m2, which the resistances use. */
    public double stressArea() {
        return stressArea;
    }

    /** Returns the area of the plain shank, pi d2/4, m2. */
    public double shankArea() {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Returns the width across flats s of head and nut, m. */
    public double acrossFlats() {
        return acrossFlats;
    }

    /** Returns the mean of the widths across flats and corners d_m, m, for punching. */
    public double meanHeadWidth() {
        return (acrossFlats + acrossCorners) / 2;
    }

    /** Returns the mean friction diameter under the head D_km, m: washer face and medium clearance hole of ISO 273. */
    public double meanFrictionDiameter() {
        return (washerFace + clearanceHole) / 2;
    }

    /**
     * Returns the diameter of the structural round hole d0, m: d + 1 mm, for M16 d + 2 mm. M12 and M14 with 2 mm clearance
     * are asked for by {@link #widerHoleDiameter()}.
     */
    public double holeDiameter() {
        return diameter + structuralClearance;
    }

    /** Returns d + 2 mm, m: the wider hole, which for M12 and M14 costs shear resistance (EN 1993-1-8 3.6.1(5)). */
    public double widerHoleDiameter() {
        return diameter + 2 * MM;
    }

    /** Returns the pitch diameter d2 = d - 0.64952 p, m. */
    public double pitchDiameter() {
        return diameter - 0.64952 * pitch;
    }

    /** Returns the root diameter d3 = d - 1.22687 p, m. */
    public double rootDiameter() {
        return diameter - 1.22687 * pitch;
    }

    /**
     * Returns the stress area by formula, A_s = pi/4 (d - 0.9382 p)2, m2; see {@link JointFormulas#STRESS_AREA}.
     *
     * @param diameter nominal diameter, m, above the pitch
     * @param pitch thread pitch, m, above zero
     * @throws IllegalArgumentException if a value is not finite or out of range
     */
    public static double stressArea(double diameter, double pitch) {
        Require.positive(pitch, "thread pitch");
        Require.within(diameter, pitch, 1, "bolt diameter");
        double d = diameter - 0.9382 * pitch;
        return Math.PI / 4 * d * d;
    }
}
