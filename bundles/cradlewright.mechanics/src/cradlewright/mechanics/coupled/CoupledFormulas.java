package cradlewright.mechanics.coupled;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** What the calculations of coupled bodies say about themselves. */
public final class CoupledFormulas {

    /** Assembly. */
    public static final Formula ASSEMBLY = new Formula("coupled.assembly",
            "Several bodies on each other and on the floor",
            "C = diag(d) + sum G_b'A_b G_b; g = g0 + sum G_b'A_b p_b; rows +(n, r x n) for the body above, the negative below",
            "own derivation, equal to one displacement finite element model of all bodies",
            "small motions, linear elastic bodies, shear of pins and braked castors without slip",
            "friction (check the shear against it afterwards), forces locked in by the order of setting down");

    /** Tipping. */
    public static final Formula TIPPING = new Formula("coupled.tipping",
            "Tipping of the shell on the dolly and of both on the floor",
            "tipping limit of each group of bodies locked together, all others taken as ground",
            "linear programming duality, own derivation", "rigid bodies; pins and brakes hold any shear",
            "elastic tilt, slip, a pin that still guides a contact which has lifted");

    /** Shell twist. */
    public static final Formula SHELL_TWIST = new Formula("coupled.shell-twist", "One short shim under a shell that twists",
            "warp force d/(4/k + b2/Kt) for a rectangle of width b on equal pads k",
            "own derivation; stiffnesses 934 and 3390 N m/deg from Motor Vehicle Structures: Concepts and Fundamentals, p. 44",
            "all four supports in contact", "bending of the shell, slip in its mounts");

    /** Sweep. */
    public static final Formula STIFFNESS_SWEEP = new Formula("coupled.stiffness-sweep",
            "Loads over the doubtful stiffness of the shell",
            "least and largest force over five stiffnesses at even ratios and rigid",
            "own derivation", "torsional stiffness within the range given", "largest values between two of the stiffnesses");

    private CoupledFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(ASSEMBLY, TIPPING, SHELL_TWIST, STIFFNESS_SWEEP);
    }
}
