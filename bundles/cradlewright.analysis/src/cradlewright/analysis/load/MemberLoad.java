package cradlewright.analysis.load;

import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.StationForces;
import java.util.List;

/**
 * Internal forces of one member.
 *
 * @param memberId the member
 * @param stations forces at the critical stations, in the axes of the member
 * @param nearEnd what the joint does to its start, in the axes of the member
 * @param farEnd what the joint does to its end, in the axes of the member
 * @param sag largest movement of its axis across itself against the straight line between its ends, m
 */
public record MemberLoad(String memberId, List<StationForces> stations, ForceMoment nearEnd, ForceMoment farEnd, double sag) {

    /** Copies the list. */
    public MemberLoad {
        stations = List.copyOf(stations);
    }
}
