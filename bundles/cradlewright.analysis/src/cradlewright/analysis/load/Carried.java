package cradlewright.analysis.load;

/**
 * What one support or castor carries in one situation; forces in N, pushing on what is above, never below zero for one that
 * only pushes.
 *
 * @param id the contact or castor
 * @param name what people call it
 * @param force worked out with the masses as listed
 * @param low at the unfavourable end where it carries least, 19 times in 20
 * @param high at the unfavourable end where it carries most, 19 times in 20
 * @param least least force that statics allow for any stiffness and any floor
 * @param most largest force that statics allow for any stiffness and any floor
 * @param shear sideways force that it must take, for one that is pinned or bolted
 */
public record Carried(String id, String name, double force, double low, double high, double least, double most, double shear) {

    /** Returns this with ends that also cover another answer for the same support or castor. */
    Carried widened(Carried other) {
        return new Carried(id, name, force, Math.min(low, other.low), Math.max(high, other.high), Math.min(least, other.least),
                Math.max(most, other.most), Math.max(shear, other.shear));
    }
}
