/** Points, vectors and polygons in SI units, right-handed: x rearward, y to the right, z up (ISO 4130). */
package cradlewright.mechanics.geometry;
