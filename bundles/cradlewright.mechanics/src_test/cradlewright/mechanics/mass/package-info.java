/** Tests of mass and balance point against published values, draws and round trips. */
package cradlewright.mechanics.mass;
