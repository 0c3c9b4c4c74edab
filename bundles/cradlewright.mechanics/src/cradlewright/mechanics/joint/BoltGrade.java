package cradlewright.mechanics.joint;

/**
 * Strength classes of bolts, stresses in Pa. Sources: EN 1993-1-8 Table 3.1 and Table 3.4; proof stresses ISO 898-1 for coarse
 * threads up to 16 mm (those of 4.6 and 5.6 from memory).
 */
public enum BoltGrade {
    /** Class 4.6. */
    G4_6("4.6", 400e6, 240e6, 225e6, 0.6),
    /** Class 5.6. */
    G5_6("5.6", 500e6, 300e6, 280e6, 0.6),
    /** Class 8.8. */
    G8_8("8.8", 800e6, 640e6, 580e6, 0.6),
    /** Class 10.9: less ductile, so the threads count for less in shear. */
    G10_9("10.9", 1000e6, 900e6, 830e6, 0.5);

    private final String label;
    private final double ultimate;
    private final double yield;
    private final double proof;
    private final double threadShearFactor;

    BoltGrade(String label, double ultimate, double yield, double proof, double threadShearFactor) {
        this.label = label;
        this.ultimate = ultimate;
        this.yield = yield;
        this.proof = proof;
        this.threadShearFactor = threadShearFactor;
    }

    /** Returns the mark on the head, for example 8.8. */
    public String label() {
        return label;
    }

    /** Returns the nominal ultimate strength f_ub, Pa. */
    public double ultimateStrength() {
        return ultimate;
    }

    /** Returns the nominal yield strength f_yb, Pa. */
    public double yieldStrength() {
        return yield;
    }

    /** Returns the proof stress S_p, Pa. */
    public double proofStress() {
        return proof;
    }

    /** Returns alpha_v for a shear plane through the threads: 0.6, for 10.9 0.5. */
    public double threadShearFactor() {
        return threadShearFactor;
    }
}
