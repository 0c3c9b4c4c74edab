package cradlewright.mechanics.timber;

/**
 * Strength classes of graded softwood, Pa and kg/m3 (EN 338; f_v,k of the 2009 and later editions, from memory, which goes with
 * the crack factor 0.67). Wood without a grade stamp belongs to none of them.
 */
public enum TimberClass {
    /** C16. */
    C16(16e6, 3.2e6, 2.2e6, 8.0e9, 5.4e9, 370),
    /** C18. */
    C18(18e6, 3.4e6, 2.2e6, 9.0e9, 6.0e9, 380),
    /** C24. */
    C24(24e6, 4.0e6, 2.5e6, 11.0e9, 7.4e9, 420);

    private final double bending;
    private final double shear;
    private final double acrossGrain;
    private final double meanModulus;
    private final double lowModulus;
    private final double meanDensity;

    TimberClass(double bending, double shear, double acrossGrain, double meanModulus, double lowModulus, double meanDensity) {
        this.bending = bending;
        this.shear = shear;
        this.acrossGrain = acrossGrain;
        this.meanModulus = meanModulus;
        this.lowModulus = lowModulus;
        this.meanDensity = meanDensity;
    }

    /** Returns the characteristic bending strength f_m,k at 150 mm depth, Pa. */
    public double bendingStrength() {
        return bending;
    }

    /** Returns the characteristic shear strength f_v,k, Pa. */
    public double shearStrength() {
        return shear;
    }

    /** Returns the characteristic compressive strength across the grain f_c,90,k, Pa. */
    public double strengthAcrossGrain() {
        return acrossGrain;
    }

    /** Returns the mean modulus along the grain E_0,mean, Pa, for deflections and frames. */
    public double meanModulus() {
        return meanModulus;
    }

    /** Returns the low (5 %) modulus along the grain E_0,05, Pa, for stability. */
    public double lowModulus() {
        return lowModulus;
    }

    /** Returns the mean density, kg/m3. */
    public double meanDensity() {
        return meanDensity;
    }
}
