/** Bolts, bolt groups, tightening and fillet welds by EN 1993-1-8 and EN 1993-1-3; design resistances, not working loads. */
package cradlewright.mechanics.joint;
