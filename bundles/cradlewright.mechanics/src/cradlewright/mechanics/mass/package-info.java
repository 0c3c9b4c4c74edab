/** Mass and balance point: composed from parts, weighed level, tilted or with one axle raised, each with its uncertainty. */
package cradlewright.mechanics.mass;
