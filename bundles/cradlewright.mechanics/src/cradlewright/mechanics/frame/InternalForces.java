package cradlewright.mechanics.frame;

/**
 * What the part of a member beyond a cut does to the part before it, in member axes: the action on the face that looks
 * towards the far end.
 *
 * @param n axial force, tension above zero, N
 * @param vy shear force along y, N
 * @param vz shear force along z, N
 * @param t torque about the shear centre, along x, N*m
 * @param my moment about y, N*m; above zero it pulls the side of z, so a sagging beam with z up has it below zero
 * @param mz moment about z, N*m; above zero it presses the side of y
 */
public record InternalForces(double n, double vy, double vz, double t, double my, double mz) {
}
