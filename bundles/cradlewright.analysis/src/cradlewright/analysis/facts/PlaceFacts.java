package cradlewright.analysis.facts;

import java.util.Optional;

/**
 * A place where something stands.
 *
 * @param kind what sort of place
 * @param slabId the slab it lies on
 * @param outdoors whether wind and rain reach it
 * @param fall slope of the floor, rise over run
 * @param temperature highest temperature there in degrees Celsius
 * @param step highest step or lip on the way in, in m
 */
public record PlaceFacts(String id, String name, Kind kind, Optional<String> slabId, boolean outdoors, Optional<Value> fall,
        Optional<Value> temperature, Optional<Value> step) implements Fact {

    /** What sort of place. */
    public enum Kind {
        BAY, RACK, YARD, BOOTH, AWAY
    }
}
