package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/**
 * Punching through a slab without shear reinforcement (EN 1992-1-1 6.4); see {@link SlabFormulas#PUNCHING}. Design resistances.
 * Soil pressure inside the perimeter, which helps, is neglected.
 *
 * @param fck cylinder strength of the concrete, Pa, 12 to 50 MPa
 * @param depth effective depth d, mean of both directions, m
 * @param reinforcement ratio of bonded tension reinforcement, sqrt(rho_x rho_y), 0 to 1; more than 0.02 counts as 0.02
 */
public record Punching(double fck, double depth, double reinforcement) {

    private static final double MPA = 1e6;
    private static final double MOST_REINFORCEMENT = 0.02;
    private static final double MOST_SIZE_FACTOR = 2;

    /** Where the load stands in the slab. */
    public enum Position {
        /** Further than 2d plus the contact from any edge. */
        INSIDE(1.15),
        /** At a free edge or joint, taken flush with it; the length of the contact lies along the edge. */
        EDGE(1.4),
        /** At a corner, taken flush with both edges. */
        CORNER(1.5);

        private final double beta;

        Position(double beta) {
            this.beta = beta;
        }

        /** Returns the factor for uneven shear where the load also turns the slab (EN 1992-1-1 6.4.3 (6)). */
        public double beta() {
            return beta;
        }
    }

    /** Refuses values out of range. */
    public Punching {
        Concrete.strength(fck);
        Require.positive(depth, "effective depth");
        Require.within(reinforcement, 0, 1, "ratio of reinforcement");
    }

    /** Returns the length of the control perimeter at 2d, m. */
    public double controlPerimeter(LoadedArea area, Position position) {
        LoadedArea square = area.squared();
        return switch (position) {
            case INSIDE -> area.perimeter() + 4 * Math.PI * depth;
            case EDGE -> square.length() + 2 * square.width() + 2 * Math.PI * depth;
            case CORNER -> square.length() + square.width() + Math.PI * depth;
        };
    }

    /** Returns the length of the perimeter at the face of the contact, m (EN 1992-1-1 6.4.5 (3), from memory). */
    public double facePerimeter(LoadedArea area, Position position) {
        LoadedArea square = area.squared();
        return switch (position) {
            case INSIDE -> area.perimeter();
            case EDGE -> square.length() + Math.min(3 * depth, 2 * square.width());
            case CORNER -> Math.min(3 * depth, square.length() + square.width());
        };
    }

    /** Returns the size factor k = 1 + sqrt(200 mm/d), at most 2. */
    public double sizeFactor() {
        return Math.min(MOST_SIZE_FACTOR, 1 + Math.sqrt(0.2 / depth));
    }

    /** Returns the stress that the reinforcement gives, (0.18/gamma_c) k (100 rho f_ck)^(1/3) MPa, Pa. */
    public double reinforcedStress() {
        double rho = Math.min(reinforcement, MOST_REINFORCEMENT);
        return 0.18 / Concrete.GAMMA_C * sizeFactor() * Math.cbrt(100 * rho * fck / MPA) * MPA;
    }

    /** Returns the least stress, 0.035 k^1.5 sqrt(f_ck) MPa, Pa. */
    public double leastStress() {
        return 0.035 * Math.pow(sizeFactor(), 1.5) * Math.sqrt(fck / MPA) * MPA;
    }

    /** Returns the resistance v_Rd,c, the larger of {@link #reinforcedStress} and {@link #leastStress}, Pa. */
    public double resistance() {
        return Math.max(reinforcedStress(), leastStress());
    }

    /**
     * Returns the force that may stand there, N: the smaller of what the control perimeter and the face of the contact carry.
     *
     * @param area the contact
     * @param position where it stands
     * @param beta factor for uneven shear, 1 for a load that does not turn the slab, else {@link Position#beta}
     */
    public double capacity(LoadedArea area, Position position, double beta) {
        Require.within(beta, 1, Double.MAX_VALUE, "factor for uneven shear");
        double atPerimeter = resistance() * controlPerimeter(area, position);
        double atFace = Concrete.faceShear(fck) * facePerimeter(area, position);
        return Math.min(atPerimeter, atFace) * depth / beta;
    }

    /** Returns beta V/(u1 d), the shear stress along the control perimeter, Pa. */
    public double stress(double force, LoadedArea area, Position position, double beta) {
        Require.within(beta, 1, Double.MAX_VALUE, "factor for uneven shear");
        return beta * Require.notNegative(force, "force") / (controlPerimeter(area, position) * depth);
    }
}
