package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A place in axes right-handed: x rearward, y to the right, z up (ISO 4130), in m.
 *
 * @param at the place
 * @param u standard uncertainty of each coordinate
 * @param heightDoubted whether u may be taken for a height too: somebody stated it, or the source is one that nobody answers for. What a
 *        tape is off by across a car says nothing of heights taken from one level
 */
public record Spot(Vec3 at, double u, boolean heightDoubted) {

    /** Makes a place whose uncertainty was stated. */
    public Spot(Vec3 at, double u) {
        this(at, u, true);
    }
}
