package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/**
 * Collapse load of a slab on soil under one round contact, from yield lines (TR34, 4th edition); see {@link
 * SlabFormulas#INTERNAL}. The results are design resistances: compare them with loads already multiplied by {@link Load#factor}.
 *
 * <p>Contacts wider than half the radius of relative stiffness are refused. Punching must be looked at by itself
 * ({@link Punching}).
 *
 * @param fck cylinder strength of the concrete, Pa, 12 to 50 MPa
 * @param thickness m
 * @param meshArea area of the lower mesh for each metre of width, m2/m; 0 for none
 * @param meshDepth distance of the mesh from the top face, m, less than the thickness
 * @param meshYield characteristic yield strength of the mesh, Pa
 * @param subgrade modulus of subgrade reaction, N/m3
 */
public record SlabUltimate(double fck, double thickness, double meshArea, double meshDepth, double meshYield, double subgrade) {

    private static final double POISSON = 0.2;
    private static final double WIDE = 0.2;
    private static final double WIDEST = 0.5;

    /** Kinds of load with their factors. */
    public enum Load {
        /** Weight that never moves. */
        PERMANENT(1.2),
        /** Standing load, such as a stand or a parked dolly. */
        STANDING(1.5),
        /** Rolling load. */
        ROLLING(1.6);

        private final double factor;

        Load(double factor) {
            this.factor = factor;
        }

        /** Returns the partial factor; see {@link SlabFormulas#LOAD_FACTOR}. */
        public double factor() {
            return factor;
        }
    }

    /** Refuses values out of range. */
    public SlabUltimate {
        Concrete.strength(fck);
        Require.positive(thickness, "thickness");
        Require.notNegative(meshArea, "area of the mesh");
        Require.within(Require.positive(meshDepth, "depth of the mesh"), 0, thickness, "depth of the mesh");
        Require.positive(meshYield, "yield strength of the mesh");
        Require.positive(subgrade, "modulus of subgrade reaction");
    }

    /** Returns the elastic model of the same slab, with E_cm and nu 0.2. */
    public Westergaard elastic() {
        return new Westergaard(Concrete.meanModulus(fck), POISSON, thickness, subgrade);
    }

    /** Returns the resistance to hogging, before the top cracks, f_ctd,fl h2/6, N m/m; see {@link SlabFormulas#MOMENTS}. */
    public double hogging() {
        return Concrete.designFlexure(fck, thickness) * thickness * thickness / 6;
    }

    /** Returns the resistance to sagging of the mesh, 0.95 A_s f_yk d/gamma_s, N m/m; see {@link SlabFormulas#MOMENTS}. */
    public double sagging() {
        return 0.95 * meshArea * meshYield * meshDepth / Concrete.GAMMA_S;
    }

    /**
     * Returns the collapse load well inside the slab, N: 2 pi (M_p + M_n) under a point, 4 pi (M_p + M_n)/(1 - a/(3 l)) from a/l
     * 0.2 on, between them weighted by (a/l)/0.2.
     *
     * @param a radius of the contact, m; 0 for a point
     */
    public double internal(double a) {
        double ratio = ratio(a);
        double both = sagging() + hogging();
        return between(ratio, 2 * Math.PI * both, 4 * Math.PI * both / (1 - ratio / 3));
    }

    /** Returns the collapse load at a free edge or joint, N; see {@link SlabFormulas#EDGE}. */
    public double edge(double a) {
        double ratio = ratio(a);
        double both = Math.PI * (sagging() + hogging());
        return between(ratio, both / 2 + 2 * hogging(), (both + 4 * hogging()) / (1 - 2 * ratio / 3));
    }

    /** Returns the collapse load at a corner, N; see {@link SlabFormulas#CORNER}. */
    public double corner(double a) {
        double ratio = ratio(a);
        return between(ratio, 2 * hogging(), 4 * hogging() / (1 - ratio));
    }

    /** Returns a/l, refused above 0.5. */
    public double ratio(double a) {
        return Require.within(Require.notNegative(a, "radius of the contact") / elastic().radius(), 0, WIDEST,
                "radius of the contact over radius of relative stiffness");
    }

    private static double between(double ratio, double point, double wide) {
        return point + (wide - point) * Math.min(ratio / WIDE, 1);
    }
}
