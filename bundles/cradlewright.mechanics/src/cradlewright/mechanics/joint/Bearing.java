package cradlewright.mechanics.joint;

import cradlewright.mechanics.formula.Require;

/**
 * Bearing of a bolt on the wall of its hole, design resistance in N. From 3 mm on EN 1993-1-8 Table 3.4
 * ({@link JointFormulas#BEARING}), thinner sheet EN 1993-1-3 Table 8.4 ({@link JointFormulas#BEARING_THIN_SHEET}).
 *
 * <p>Valid only if {@link BoltSpacing} finds nothing; closer to an edge the resistance fades to zero here. The net section of the
 * plate is checked elsewhere.
 *
 * @param boltDiameter d, m
 * @param holeDiameter d0, m, at least d
 * @param thickness plate t, m, at least 0.75 mm
 * @param plateUltimate f_u of the plate, Pa; below 3 mm at most 550 MPa
 * @param boltUltimate f_ub, Pa
 * @param position distances to edges and neighbours
 * @param hole kind of hole
 * @param gammaM2 partial factor, 1 to 10
 */
public record Bearing(double boltDiameter, double holeDiameter, double thickness, double plateUltimate, double boltUltimate,
        HolePosition position, HoleKind hole, double gammaM2) {

    /** Plates from this thickness on follow EN 1993-1-8, m. */
    public static final double THICK_FROM = 3e-3;
    /** Thinnest sheet of EN 1993-1-3 Table 8.4, m. */
    public static final double THINNEST = 0.75e-3;

    /** Strongest steel of EN 1993-1-3 Table 8.4, Pa. */
    public static final double STRONGEST_SHEET = 550e6;

    private static final double FULL_SHEET_FACTOR_FROM = 1.25e-3;

    /** Refuses values out of range. */
    public Bearing {
        Require.positive(boltDiameter, "bolt diameter");
        Require.within(holeDiameter, boltDiameter, 3 * boltDiameter, "hole diameter");
        Require.within(thickness, THINNEST, 1, "plate thickness");
        Require.positive(plateUltimate, "ultimate strength of the plate");
        Require.positive(boltUltimate, "ultimate strength of the bolt");
        Require.within(gammaM2, 1, 10, "gamma_M2");
        if (thickness < THICK_FROM) {
            Require.within(plateUltimate, 0, STRONGEST_SHEET, "ultimate strength of sheet below 3 mm");
        }
        if (position == null || hole == null) {
            throw new IllegalArgumentException("bearing needs the position and the kind of the hole");
        }
    }

    /** Returns whether the rule for thin sheet applies (below 3 mm). */
    public boolean thinSheet() {
        return thickness < THICK_FROM;
    }

    /** Returns alpha_b: how much the end distance, the pitch and a soft bolt leave of the resistance. */
    public double alphaB() {
        if (thinSheet()) {
            return Math.min(1, position.end() / (3 * boltDiameter));
        }
        double atEnd = position.end() / (3 * holeDiameter);
        double between = position.pitch() / (3 * holeDiameter) - 0.25;
        return Math.max(0, Math.min(Math.min(atEnd, between), Math.min(boltUltimate / plateUltimate, 1)));
    }

    /** Returns k1 for the distances across the force; 2.5 for thin sheet, where the minima of the table stand for it. */
    public double k1() {
        if (thinSheet()) {
            return 2.5;
        }
        double atEdge = 2.8 * position.edge() / holeDiameter - 1.7;
        double between = 1.4 * position.gauge() / holeDiameter - 1.7;
        return Math.max(0, Math.min(Math.min(atEdge, between), 2.5));
    }

    /** Returns k_t: sheet up to 1.25 mm bears less, (0.8 t + 1.5)/2.5 with t in mm; 1 above. */
    public double kT() {
        return thickness > FULL_SHEET_FACTOR_FROM ? 1 : (0.8 * thickness * 1e3 + 1.5) / 2.5;
    }

    /** Returns F_b,Rd, N, with the factor of oversize and slotted holes. */
    public double resistance() {
        return hole.bearingFactor() * k1() * alphaB() * kT() * plateUltimate * boltDiameter * thickness / gammaM2;
    }

    /**
     * Returns the upper limit of F_b,Rd in a single lap with one row of bolts, 1.5 f_u d t/gamma_M2, N; washers under head and
     * nut are taken for granted. See {@link JointFormulas#SINGLE_LAP}.
     */
    public double singleLapLimit() {
        return 1.5 * plateUltimate * boltDiameter * thickness / gammaM2;
    }

    /**
     * Returns the thickness that bears under a countersunk head: plate less half the depth of the countersink
     * (EN 1993-1-8 Table 3.4, note), m.
     *
     * @throws IllegalArgumentException if the countersink is deeper than the plate
     */
    public static double countersunkThickness(double plate, double countersink) {
        Require.positive(plate, "plate thickness");
        Require.within(countersink, 0, plate, "depth of the countersink");
        return plate - countersink / 2;
    }
}
