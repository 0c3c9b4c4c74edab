/** Tests of grades and resistances against standards, worked examples and independent solutions. */
package cradlewright.mechanics.steel;
