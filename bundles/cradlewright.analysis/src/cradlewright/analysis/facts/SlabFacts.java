package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A floor slab.
 *
 * @param thickness in m
 * @param concrete cylinder strength f_ck in Pa
 * @param subgrade modulus of subgrade reaction in N/m3
 * @param meshArea steel area of the fabric in m2 per m, each way
 * @param dailyWheel mass in kg on the car wheel that stands there daily
 * @param dailyWheelContact contact area of that wheel in m2
 * @param suspended whether there is a room below; nothing when nobody said
 */
public record SlabFacts(String id, String name, Optional<Value> thickness, Optional<Value> concrete, Optional<Value> subgrade,
        Optional<Value> meshArea, Optional<Value> dailyWheel, Optional<Value> dailyWheelContact, Optional<Boolean> suspended)
        implements Fact {
}
