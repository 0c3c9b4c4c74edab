/** Tests of coupled bodies against check values, closed forms and each other. */
package cradlewright.mechanics.coupled;
