package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;

/** Stiffness of the straight prismatic member. */
public final class BeamElement {

    private BeamElement() {
    }

    /**
     * Stiffness of a member in its own axes: twelve actions on the ends from twelve movements of the ends, in the order of
     * {@link Dof}, near end first. Exact for the Timoshenko beam. Movements and actions are those of the centroid; the member
     * twists about its shear centre. See {@link FrameFormulas#ELEMENT} and {@link FrameFormulas#SHEAR_CENTRE}.
     *
     * @param section stiffness of the section
     * @param length m
     * @return symmetric matrix in N/m, N and N*m
     * @throws IllegalArgumentException if the length is not above zero
     */
    public static double[][] stiffness(MemberSection section, double length) {
        Require.positive(length, "member length");
        double[][] k = new double[12][12];
        link(k, 0, section.e() * section.area() / length);
        link(k, 3, section.g() * section.j() / length);
        bend(k, 1, 5, 1, section.e() * section.iz(), section.g() * section.shearAreaY(), length);
        bend(k, 2, 4, -1, section.e() * section.iy(), section.g() * section.shearAreaZ(), length);
        boolean twistsAboutCentroid = section.shearCentreY() == 0 && section.shearCentreZ() == 0;
        return twistsAboutCentroid ? k : Vectors.congruent(toShearCentre(section), k);
    }

    /** Movements of the shear centre at both ends from those of the centroid. */
    private static double[][] toShearCentre(MemberSection section) {
        double[][] moved = new double[12][12];
        for (int i = 0; i < 12; i++) {
            moved[i][i] = 1;
        }
        for (int end = 0; end < 12; end += 6) {
            moved[end + 1][end + 3] = -section.shearCentreZ();
            moved[end + 2][end + 3] = section.shearCentreY();
        }
        return moved;
    }

    private static void link(double[][] k, int dof, double stiffness) {
        k[dof][dof] = stiffness;
        k[dof + 6][dof + 6] = stiffness;
        k[dof][dof + 6] = -stiffness;
        k[dof + 6][dof] = -stiffness;
    }

    /** Bending in one plane: {@code sign} is -1 where a turn above zero lowers the far end. */
    private static void bend(double[][] k, int shift, int turn, int sign, double ei, double ga, double length) {
        double phi = 12 * ei / (ga * length * length);
        double c = ei / (length * length * length * (1 + phi));
        int[] dofs = {shift, turn, shift + 6, turn + 6};
        double side = 6 * c * length * sign;
        double own = (4 + phi) * c * length * length;
        double other = (2 - phi) * c * length * length;
        double[][] block = {
            {12 * c, side, -12 * c, side},
            {side, own, -side, other},
            {-12 * c, -side, 12 * c, -side},
            {side, other, -side, own}};
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                k[dofs[i]][dofs[j]] = block[i][j];
            }
        }
    }
}
