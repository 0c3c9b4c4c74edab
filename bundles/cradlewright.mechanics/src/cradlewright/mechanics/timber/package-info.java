/** Timber rails of rectangular section by EN 1995-1-1: bending, shear, seats; lateral buckling is not looked at. */
package cradlewright.mechanics.timber;
