/** Direct solution of sparse symmetric positive definite systems: assembly, ordering, profile factorisation. */
package cradlewright.mechanics.linear;
