package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;

/**
 * A place in axes right-handed: x rearward, y to the right, z up (ISO 4130), in m.
 *
 * @param at the place
 * @param u standard uncertainty of each coordinate
 */
public record Spot(Vec3 at, double u) {
}
