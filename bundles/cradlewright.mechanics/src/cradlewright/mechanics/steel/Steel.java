package cradlewright.mechanics.steel;

/** Constants of structural steel, EN 1993-1-1 3.2.6, and recommended partial factors, 6.1. */
public final class Steel {

    /** Modulus of elasticity, Pa. */
    public static final double E = 210e9;
    /** Shear modulus, rounded as in EN 1993-1-1, Pa. */
    public static final double G = 81e9;
    /** Poisson's ratio. */
    public static final double POISSON = 0.3;
    /** Density, kg/m3. */
    public static final double DENSITY = 7850;
    /** Partial factor for the resistance of cross-sections, recommended value. */
    public static final double GAMMA_M0 = 1.0;
    /** Partial factor for the resistance of members to buckling, recommended value. */
    public static final double GAMMA_M1 = 1.0;

    private Steel() {
    }
}
