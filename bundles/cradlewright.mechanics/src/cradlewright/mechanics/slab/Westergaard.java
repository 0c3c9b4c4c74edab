package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/**
 * Elastic stress and sag of a large uncracked slab on soil under one round contact; see {@link
 * SlabFormulas#WESTERGAARD_INTERIOR}, {@link SlabFormulas#WESTERGAARD_EDGE}, {@link SlabFormulas#WESTERGAARD_CORNER}.
 *
 * <p>Joints and cracks count as edges. A contact wider than half the radius of relative stiffness is refused. Neglected: loads
 * nearby (ask {@link #feelsNeighbour}), curling, voids below the slab, shrinkage.
 *
 * @param modulus E of the concrete, Pa
 * @param poisson nu of the concrete, 0 to 0.5
 * @param thickness h, m
 * @param subgrade k of the soil, N/m3
 */
public record Westergaard(double modulus, double poisson, double thickness, double subgrade) {

    private static final double WIDEST = 0.5;

    /**
     * What the slab does under the load.
     *
     * @param stress largest bending tension, Pa
     * @param sag deflection, m
     */
    public record Response(double stress, double sag) {
    }

    /** Refuses values out of range. */
    public Westergaard {
        Require.positive(modulus, "modulus of the concrete");
        Require.within(poisson, 0, 0.5, "Poisson's ratio");
        Require.positive(thickness, "thickness");
        Require.positive(subgrade, "modulus of subgrade reaction");
    }

    /**
     * Returns the radius of relative stiffness, l = (E h3/(12 (1 - nu2) k))^(1/4), m; see {@link
     * SlabFormulas#WESTERGAARD_RADIUS}.
     */
    public double radius() {
        return Math.pow(modulus * cube(thickness) / (12 * (1 - poisson * poisson) * subgrade), 0.25);
    }

    /** Returns true when a second load {@code distance} m away adds to the stress: closer than about 2 l. */
    public boolean feelsNeighbour(double distance) {
        return Require.notNegative(distance, "distance") < 2 * radius();
    }

    /**
     * Returns the response well inside the slab.
     *
     * @param force N
     * @param a radius of the contact, m, up to half the radius of relative stiffness
     */
    public Response interior(double force, double a) {
        double ratio = ratio(force, a);
        double h = thickness;
        double b = a < 1.724 * h ? Math.sqrt(1.6 * a * a + h * h) - 0.675 * h : a;
        double l = radius();
        double stress = 3 * (1 + poisson) * force / (2 * Math.PI * h * h) * (Math.log(l / b) + 0.6159);
        double sag = force / (8 * subgrade * l * l) * (1 + (Math.log(ratio / 2) - 0.673) * ratio * ratio / (2 * Math.PI));
        return new Response(stress, sag);
    }

    /** Returns the response with the round contact touching a free edge or joint; arguments as in {@link #interior}. */
    public Response edge(double force, double a) {
        double ratio = ratio(force, a);
        double h = thickness;
        double bracket = Math.log(modulus * cube(h) / (100 * subgrade * a * cube(a))) + 1.84 - 4 * poisson / 3 + (1 - poisson) / 2
                + 1.18 * (1 + 2 * poisson) * ratio;
        double stress = 3 * (1 + poisson) * force / (Math.PI * (3 + poisson) * h * h) * bracket;
        double sag = Math.sqrt(2 + 1.2 * poisson) * force / Math.sqrt(modulus * cube(h) * subgrade)
                * (1 - (0.76 + 0.4 * poisson) * ratio);
        return new Response(stress, sag);
    }

    /** Returns the response with the round contact touching both edges of a corner; arguments as in {@link #interior}. */
    public Response corner(double force, double a) {
        double reach = ratio(force, a) * Math.sqrt(2);
        double l = radius();
        double stress = 3 * force / (thickness * thickness) * (1 - Math.pow(reach, 0.6));
        double sag = force / (subgrade * l * l) * (1.1 - 0.88 * reach);
        return new Response(stress, sag);
    }

    private double ratio(double force, double a) {
        Require.notNegative(force, "force");
        return Require.within(Require.positive(a, "radius of the contact") / radius(), 0, WIDEST,
                "radius of the contact over radius of relative stiffness");
    }

    private static double cube(double v) {
        return v * v * v;
    }
}
