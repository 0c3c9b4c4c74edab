package cradlewright.mechanics.castor;

import java.util.List;

import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * The rating that the trade rule asks of each castor, and beside it what statics say for a rigid frame
 * ({@link CastorFormulas#TRADE_RULE}, {@link CastorFormulas#THREE_CARRY}). Masses, because ratings are printed in kg.
 *
 * <p>The trade rule lets three castors share alike. A rigid frame does not: the two castors of one diagonal can carry all of a
 * centred load. Rate by the larger figure unless the give of castors and floor is known to even the loads out.
 *
 * @param average total over number, kg
 * @param tradeRule total over number less one, kg
 * @param rigidWorst worst castor over all states of a rigid frame on an uneven floor, kg
 */
public record CastorRule(double average, double tradeRule, double rigidWorst) {

    /** Low end of the service factor for transport equipment (one maker's selection guide). */
    public static final double SERVICE_FACTOR_LOW = 1.5;
    /** High end of the service factor for transport equipment (one maker's selection guide). */
    public static final double SERVICE_FACTOR_HIGH = 2.0;

    /**
     * Returns the figures side by side.
     *
     * @param own own mass of the dolly, kg, not below zero
     * @param load mass of the load, kg, above zero
     * @param contacts floor contacts of the castors, m
     * @param balancePoint common balance point of dolly and load, m
     * @throws IllegalArgumentException for input out of range or a balance point outside all castors
     */
    public static CastorRule compare(double own, double load, List<Vec3> contacts, Vec3 balancePoint) {
        double rule = tradeRule(own, load, contacts.size());
        CastorStates states = CastorStates.of(contacts, balancePoint, (own + load) * Constants.GRAVITY);
        if (!states.stands()) {
            throw new IllegalArgumentException("the balance point must lie between the castors, found " + balancePoint);
        }
        return new CastorRule((own + load) / contacts.size(), rule, states.worst() / Constants.GRAVITY);
    }

    /** Returns (E + Z)/(n - 1), kg: own mass E, load Z, n castors from 2. */
    public static double tradeRule(double own, double load, int castors) {
        Require.within(castors, 2, CastorStates.MOST_CASTORS, "number of castors");
        return total(own, load) / (castors - 1);
    }

    /** Returns half of the total, kg: the rating that one maker asks for where shocks occur, whatever the number of castors. */
    public static double shockRule(double own, double load) {
        return total(own, load) / 2;
    }

    private static double total(double own, double load) {
        return Require.notNegative(own, "own mass") + Require.positive(load, "mass of the load");
    }

    /** Returns the larger of trade rule and rigid worst case, kg. */
    public double cautious() {
        return Math.max(tradeRule, rigidWorst);
    }
}
