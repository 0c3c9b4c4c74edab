package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;

/**
 * A rail, cross member, leg or brace of a dolly.
 *
 * @param fromId node at its start
 * @param toId node at its end
 * @param sectionId section in stock
 * @param steelId steel in stock
 * @param up direction of the section's height
 * @param releaseFrom what its start lets go of
 * @param releaseTo what its end lets go of
 * @param jointFromId joint at its start
 * @param jointToId joint at its end
 * @param unbraced length without sideways support, in m
 */
public record MemberFacts(String id, String name, Optional<String> fromId, Optional<String> toId, Optional<String> sectionId,
        Optional<String> steelId, Optional<Vec3> up, EndRelease releaseFrom, EndRelease releaseTo, Optional<String> jointFromId,
        Optional<String> jointToId, Optional<Value> unbraced) implements Fact {

    /** Returns this member of another section in stock. */
    public MemberFacts withSection(String other) {
        return new MemberFacts(id, name, fromId, toId, Optional.of(other), steelId, up, releaseFrom, releaseTo,
                jointFromId, jointToId, unbraced);
    }
}
