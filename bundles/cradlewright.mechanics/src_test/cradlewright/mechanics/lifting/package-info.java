/** Tests of lifts, slings and stands against published values, equilibrium and brute force. */
package cradlewright.mechanics.lifting;
