package cradlewright.mechanics.steel;

/**
 * How a torque is carried at a cut; the three need not belong to one state of the member's ends.
 *
 * @param uniform torque carried as in a bar that is free to warp (Saint-Venant), largest size, N*m
 * @param warping torque carried by the shear that goes with restrained warping, largest size, N*m
 * @param bimoment largest size, N*m2
 */
public record TwistShares(double uniform, double warping, double bimoment) {

    static final TwistShares NONE = new TwistShares(0, 0, 0);

    TwistShares or(TwistShares other) {
        return new TwistShares(Math.max(uniform, other.uniform), Math.max(warping, other.warping), Math.max(bimoment, other.bimoment));
    }
}
