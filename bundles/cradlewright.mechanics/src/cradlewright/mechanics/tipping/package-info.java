/** Balance of a rigid load on the floor: support polygon, push, slope, person on an overhang, kerb hit; by statics and energy. */
package cradlewright.mechanics.tipping;
